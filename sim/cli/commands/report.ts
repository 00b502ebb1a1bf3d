import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { chartFiles, renderReport } from "../../../viz/index.ts";
import { type Drawn, readResults, rebuiltFiles, type StudyResults, writeRunFolder } from "../../days/results/index.ts";
import { readImprovement } from "../../questions/improve/index.ts";
import { readOptionsResult } from "../../questions/options/index.ts";
import { readSeasonResult } from "../../questions/season/index.ts";
import { NoBrowser, openBrowser, pagePrint } from "../browser.ts";
import { BadInput } from "../faults.ts";
import { readInputFile, readNamedText } from "../inputs.ts";
import type { RunAnswer } from "../runFolder.ts";
import { lockFolder, takeRunFolder } from "../runFolder.ts";
import { runWorkbook } from "../runWorkbook.ts";
import { counted, type Terminal } from "../terminal.ts";

/** Pixels of the PNG for each one of the drawing: sharp in a text on paper. */
const SCALE = 2;

export interface ReportCommandOptions {
  png?: boolean;
  pdf?: boolean;
  xlsx?: boolean;
}

/** Results are written by this program, not by hand, and may be long; one text in memory cannot be much longer. */
const MAX_MEGABYTES = 500;

/** Draws report and charts of a finished run anew from its data, and on demand what other programs want of it. */
export async function reportCommand(terminal: Terminal, folder: string, options: ReportCommandOptions): Promise<void> {
  if (!existsSync(folder)) throw new BadInput([`${folder}: no such folder; name the folder of a finished run.`]);
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
      `Written: ${join(folder, "report.html")} and ${counted(made.length - 1, "other file")}, redrawn from its data.`,
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
    throw new BadInput(other.map(({ name }) => `${join(folder, name)}: this is not a plain file; remove it.`));
}

interface Run {
  results: StudyResults;
  plan: unknown;
  answer: RunAnswer;
}

function readRun(folder: string): Run {
  const path = join(folder, "results.json");
  if (!existsSync(path)) throw new BadInput([`${folder}: ${whyNoRun(folder)}`]);
  if (statSync(path).size > MAX_MEGABYTES * 1e6)
    throw new BadInput([
      `${path}: this is larger than ${MAX_MEGABYTES} MB, too large to draw from; its tables are complete.`,
    ]);
  const { results, problem } = readResults(readNamedText(path, MAX_MEGABYTES));
  if (results === null) throw new BadInput([`${path}: ${problem}.`]);
  const plan = readInputFile(join(folder, "plan.json"), { megabytes: MAX_MEGABYTES }).json;
  const answer = {
    improvement: answerIn(folder, "improvement.json", readImprovement),
    offers: answerIn(folder, "line-up.json", readOptionsResult),
    season: answerIn(folder, "season.json", readSeasonResult),
  };
  return { results, plan, answer };
}

/** Folders that other commands leave are whole as they are. */
const WHOLE = [
  { file: "doubt.json", command: "gambrel doubt", page: "report.html" },
  { file: "dossier.json", command: "gambrel size", page: "dossier.html" },
  { file: "layout.json", command: "gambrel layout", page: "report.html" },
];

function whyNoRun(folder: string): string {
  const left = WHOLE.find(({ file }) => existsSync(join(folder, file)));
  return left === undefined
    ? "there is no results.json in it; name the folder of a finished run."
    : `this is what ${left.command} left; its report is ${left.page}. To draw it anew run ${left.command} again with --overwrite.`;
}

/** Undefined in the folder of a run that answers by its results alone. */
function answerIn<Answer>(folder: string, name: string, read: (json: unknown) => Answer | null): Answer | undefined {
  const path = join(folder, name);
  if (!existsSync(path)) return undefined;
  const found = read(readInputFile(path, { megabytes: MAX_MEGABYTES }).json);
  if (found === null)
    throw new BadInput([
      `${path}: there is no answer in this file that this version can tell (an earlier one may have written it). Run the command again; or move the file away: the report is then drawn from the simulated days, without that answer.`,
    ]);
  return found;
}

/** What needs a browser is `missing` where none starts, and all else is drawn nevertheless. */
async function draw(
  { results, plan, answer }: Run,
  { png = false, pdf = false, xlsx = false }: ReportCommandOptions,
): Promise<{ drawn: Drawn; missing: NoBrowser | null }> {
  const reportHtml = renderReport(results, { planFile: plan, ...answer });
  const charts = chartFiles(results, answer);
  const tables = xlsx ? { tables: await runWorkbook(results, plan) } : {};
  const drawn = { reportHtml, charts, ...tables };
  if (!png && !pdf) return { drawn, missing: null };
  try {
    return { drawn: { ...drawn, ...(await printed(drawn, { png, pdf })) }, missing: null };
  } catch (error) {
    if (error instanceof NoBrowser) return { drawn, missing: error };
    throw error;
  }
}

async function printed({ reportHtml, charts }: Drawn, { png, pdf }: ReportCommandOptions): Promise<Partial<Drawn>> {
  const browser = await openBrowser();
  try {
    const images = png ? await chartImages(browser, charts) : null;
    return {
      ...(images === null ? {} : { charts: charts.map((chart, index) => ({ ...chart, png: images[index]! })) }),
      ...(pdf ? { reportPdf: await pagePrint(browser, reportHtml) } : {}),
    };
  } finally {
    await browser.close();
  }
}

/** Each picture as a PNG, twice its size. The page has no script and asks for nothing. */
async function chartImages(browser: Browser, charts: readonly { svg: string }[]): Promise<Uint8Array[]> {
  const context = await browser.newContext({ deviceScaleFactor: SCALE, javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    const images: Uint8Array[] = [];
    for (const { svg } of charts) {
      await page.setContent(`<body style="margin:0">${svg}</body>`);
      images.push(new Uint8Array(await page.locator("svg").screenshot()));
    }
    return images;
  } finally {
    await context.close();
  }
}
