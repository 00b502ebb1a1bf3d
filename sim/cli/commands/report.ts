import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Browser, LaunchOptions } from "playwright-core";
import { chartFiles, renderReport } from "../../../viz/index.ts";
import { type Drawn, readResults, rebuiltFiles, type StudyResults, writeRunFolder } from "../../days/results/index.ts";
import { readImprovement } from "../../questions/improve/index.ts";
import { readOptionsResult } from "../../questions/options/index.ts";
import { readSeasonResult } from "../../questions/season/index.ts";
import { BadInput } from "../faults.ts";
import { readInputFile, readNamedText } from "../inputs.ts";
import type { RunAnswer } from "../runFolder.ts";
import { lockFolder, takeRunFolder } from "../runFolder.ts";
import { runWorkbook } from "../runWorkbook.ts";
import { counted, type Terminal } from "../terminal.ts";

/** Pixels of the PNG for each one of the drawing: sharp in a text on paper. */
const SCALE = 2;

/** Installed browsers by the names under which the driver knows where they are on each system. */
const CHANNELS = ["chrome", "msedge", "chromium"] as const;

const COMMON_PATHS = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/snap/bin/chromium"];

/** A browser that a checkout of this program brings for its tests; an installed program has none. */
const CHECKOUT_BROWSER = "@sparticuz/chromium";

/** What it is started with beyond its own needs and would not outlive its first page with. */
const UNWANTED = ["--single-process", "--no-zygote", "--disable-web-security", "--allow-running-insecure-content"];

/** PNG and PDF cannot be drawn here; the message says why and names the remedy. */
class NoBrowser extends Error {}

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
  if (!existsSync(path))
    throw new BadInput([`${folder}: there is no results.json in it; name the folder of a finished run.`]);
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
      ...(pdf ? { reportPdf: await reportPrint(browser, reportHtml) } : {}),
    };
  } finally {
    await browser.close();
  }
}

/**
 * A browser, headless and without a window: the one that GAMBREL_BROWSER names, else an installed Chrome,
 * Edge or Chromium, else the one that a checkout brings. The caller closes it. Throws `NoBrowser` when there is none.
 */
async function openBrowser(named = process.env.GAMBREL_BROWSER): Promise<Browser> {
  const driver = await loadDriver();
  const paths = named ? [named] : COMMON_PATHS.filter((path) => existsSync(path));
  const attempts: (() => Promise<LaunchOptions>)[] = [
    ...paths.map((executablePath) => async () => ({ executablePath })),
    ...(named ? [] : CHANNELS.map((channel) => async () => ({ channel }))),
    ...(named ? [] : [checkoutBrowser]),
  ];
  for (const attempt of attempts) {
    try {
      return await driver.launch({ ...(await attempt()), headless: true });
    } catch {
      // Not there, or not willing: the next one.
    }
  }
  throw new NoBrowser(
    named
      ? `No PNG or PDF was written. GAMBREL_BROWSER: no browser starts from ${named}; give the path of Chrome, Edge or Chromium.`
      : "No PNG or PDF was written: that needs a browser, and none was found. Install Chrome, Edge or Chromium, or set GAMBREL_BROWSER to its path; or leave out --png and --pdf: report.html prints from any browser.",
  );
}

/** Rejects outside a checkout, and where that browser does not run. */
async function checkoutBrowser(): Promise<LaunchOptions> {
  const { default: browser } = (await import(CHECKOUT_BROWSER)) as {
    default: { args: string[]; executablePath(): Promise<string> };
  };
  return {
    executablePath: await browser.executablePath(),
    args: browser.args.filter((arg) => !UNWANTED.includes(arg)),
  };
}

async function loadDriver() {
  try {
    return (await import("playwright-core")).chromium;
  } catch {
    throw new NoBrowser(
      "No PNG or PDF was written: that needs the package playwright-core, which is not installed. Run: npm install playwright-core.",
    );
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

/** The report on A4, with everything that is folded away on the screen because it is long. */
async function reportPrint(browser: Browser, reportHtml: string): Promise<Uint8Array> {
  const context = await browser.newContext({ javaScriptEnabled: false, offline: true });
  try {
    const page = await context.newPage();
    await page.setContent(reportHtml.replace('<details class="inputs">', '<details class="inputs" open>'));
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, tagged: true, outline: true });
    return new Uint8Array(pdf);
  } finally {
    await context.close();
  }
}
