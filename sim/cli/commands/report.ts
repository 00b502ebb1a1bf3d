import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { chartFiles, renderReport } from "../../../viz/index.ts";
import { type Drawn, readResults, rebuiltFiles, type StudyResults, writeRunFolder } from "../../days/results/index.ts";
import { readImprovement } from "../../questions/improve/index.ts";
import { readOptionsResult } from "../../questions/options/index.ts";
import { BadInput } from "../badInput.ts";
import { takeRunFolder } from "../checkRunFolder.ts";
import { readInputFile, readNamedText } from "../inputFile.ts";
import { NoBrowser, openBrowser } from "../openBrowser.ts";
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
    takeRunFolder(folder, true);
    refuseLinks(folder);
    const run = readRun(folder);
    const { drawn, missing } = await draw(run, options);
    const files = rebuiltFiles(folder, drawn, missing !== null);
    writeRunFolder(folder, files, true);
    const made = files.filter(({ path }) => /^(report|tables|charts)/.test(path));
    terminal.say(
      `Written: ${join(folder, "report.html")} and ${made.length - 1} other files drawn from its data.`,
      "green",
    );
    if (missing !== null) throw missing;
  } finally {
    unlock();
  }
}

/** Its data are taken over as they are: not from elsewhere through a link, and not from a pipe, which may have no end. */
function refuseLinks(folder: string): void {
  const other = readdirSync(folder, { withFileTypes: true }).filter(
    (entry) => !(entry.name === "charts" ? entry.isDirectory() : entry.isFile()),
  );
  if (other.length > 0)
    throw new BadInput(other.map(({ name }) => `${join(folder, name)}: this is no file of its own; take it away.`));
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
    offers: answerIn(folder, "line-up.json", readOptionsResult),
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

/** What needs a browser is `missing` where none starts, and all else is drawn nevertheless. */
async function draw(
  { results, plan, answer }: Run,
  { png = false, pdf = false, xlsx = false }: ReportCommandOptions,
): Promise<{ drawn: Drawn; missing: NoBrowser | null }> {
  const reportHtml = renderReport(results, { planFile: plan, ...answer });
  const charts = chartFiles(results, answer);
  const tables = xlsx ? { tables: await (await import("../runTables.ts")).runTables(results, plan) } : {};
  const drawn = { reportHtml, charts, ...tables };
  if (!png && !pdf) return { drawn, missing: null };
  try {
    return { drawn: { ...drawn, ...(await print(drawn, { png, pdf })) }, missing: null };
  } catch (error) {
    if (error instanceof NoBrowser) return { drawn, missing: error };
    throw error;
  }
}

async function print({ reportHtml, charts }: Drawn, { png, pdf }: ReportCommandOptions): Promise<Partial<Drawn>> {
  const browser = await openBrowser();
  try {
    const { chartImages, reportPrint } = await import("../printRun.ts");
    const images = png ? await chartImages(browser, charts) : null;
    return {
      ...(images === null ? {} : { charts: charts.map((chart, index) => ({ ...chart, png: images[index]! })) }),
      ...(pdf ? { reportPdf: await reportPrint(browser, reportHtml) } : {}),
    };
  } finally {
    await browser.close();
  }
}
