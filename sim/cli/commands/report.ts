import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { chartFiles, renderReport } from "../../../viz/index.ts";
import { readImprovement } from "../../improve/index.ts";
import {
  type Drawn,
  mendRunFolder,
  readResults,
  rebuiltFiles,
  type StudyResults,
  writeRunFolder,
} from "../../results/index.ts";
import { readLineUp } from "../../worth/index.ts";
import { BadInput } from "../badInput.ts";
import { readInputFile, readNamedText } from "../inputFile.ts";
import { lockFolder } from "../openRunJournal.ts";
import type { Terminal } from "../terminal.ts";
import type { RunAnswer } from "../writeRun.ts";

export interface ReportCommandOptions {
  png?: boolean;
  pdf?: boolean;
  xlsx?: boolean;
}

/** Results are written by this program, not by hand, and may be long; one text in memory cannot be much longer. */
const MOST_MEGABYTES = 500;

/** Draws report and charts of a finished run anew from its data, and on demand what other programs want of it. */
export async function reportCommand(terminal: Terminal, folder: string, options: ReportCommandOptions): Promise<void> {
  if (!existsSync(folder))
    throw new BadInput([`${folder}: there is no such folder; name the folder of a day or study.`]);
  const unlock = await lockFolder(folder);
  try {
    mendRunFolder(folder);
    const run = readRun(folder);
    const drawn = await draw(run, options);
    const files = rebuiltFiles(folder, drawn);
    writeRunFolder(folder, files, true);
    const made = files.filter(({ path }) => /^(report|tables|charts)/.test(path));
    terminal.say(
      `Written: ${join(folder, "report.html")} and ${made.length - 1} other files drawn from its data.`,
      "green",
    );
  } finally {
    unlock();
  }
}

interface Run {
  results: StudyResults;
  plan: unknown;
  answer: RunAnswer;
}

function readRun(folder: string): Run {
  const path = join(folder, "results.json");
  if (!existsSync(path)) throw new BadInput([`${folder}: holds no results.json; name the folder of a day or study.`]);
  if (statSync(path).size > MOST_MEGABYTES * 1e6)
    throw new BadInput([`${path}: is larger than ${MOST_MEGABYTES} MB, too large to draw from; its tables are whole.`]);
  const { results, problem } = readResults(readNamedText(path, MOST_MEGABYTES));
  if (results === null) throw new BadInput([`${path}: ${problem}.`]);
  const plan = readInputFile(join(folder, "plan.json"), { megabytes: MOST_MEGABYTES }).json;
  const answer = {
    improvement: answerIn(folder, "improvement.json", readImprovement),
    lineUp: answerIn(folder, "line-up.json", readLineUp),
  };
  return { results, plan, answer };
}

/** Undefined in the folder of a run that answers by its results alone. */
function answerIn<Answer>(folder: string, name: string, read: (json: unknown) => Answer | null): Answer | undefined {
  const path = join(folder, name);
  if (!existsSync(path)) return undefined;
  const found = read(readInputFile(path, { megabytes: MOST_MEGABYTES }).json);
  if (found === null) throw new BadInput([`${path}: this holds no answer to draw from; ask again, or take it away.`]);
  return found;
}

async function draw({ results, plan, answer }: Run, options: ReportCommandOptions): Promise<Drawn> {
  const { png = false, pdf = false, xlsx = false } = options;
  const reportHtml = renderReport(results, { planFile: plan, ...answer });
  const charts = chartFiles(results, answer);
  const tables = xlsx ? { tables: await (await import("../runTables.ts")).runTables(results, plan) } : {};
  if (!png && !pdf) return { reportHtml, charts, ...tables };
  const browser = await (await import("../openBrowser.ts")).openBrowser();
  try {
    const { chartImages, reportPrint } = await import("../printRun.ts");
    const images = png ? await chartImages(browser, charts) : [];
    return {
      ...{ reportHtml, ...tables },
      charts: charts.map((chart, index) => ({ ...chart, ...(png ? { png: images[index]! } : {}) })),
      ...(pdf ? { reportPdf: await reportPrint(browser, reportHtml) } : {}),
    };
  } finally {
    await browser.close();
  }
}
