import { resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadStudy, readInputFile } from "../../sim/cli/inputs.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import { doubtWords } from "../../sim/questions/doubt/index.ts";
import type { StudyResults } from "../../viz/contract.ts";
import { renderDoubtReport, renderReport } from "../../viz/index.ts";
import { openBrowser } from "../support/browser.ts";
import { seenDoubt } from "../support/doubtCase.ts";
import { exampleDay } from "../support/exampleDay.ts";
import { exampleWeek } from "../support/exampleWeek.ts";

/** Three days show how a report is laid out; nobody decides by them. */
const DAYS = 3;
const EXPERIMENTS = resolve(import.meta.dirname, "../../experiments");

async function exampleStudy(name: string): Promise<StudyResults> {
  const { study } = await loadStudy(readInputFile(resolve(EXPERIMENTS, `${name}.json`)));
  return runStudy({ ...study, replications: DAYS }, { gambrel: "test", command: "test" });
}

const LONG_NAMES = Array.from({ length: 11 }, (_, index) => ({
  name: `evisceration with ${index + 6} places and a second trolley`,
  set: { "line.evisceration.buffer": index + 6 },
}));

/** An example study with another plan or design; only the crews' plan is small enough for a hundred variants. */
async function changedStudy(name: string, change: object): Promise<StudyResults> {
  const file = readInputFile(resolve(EXPERIMENTS, `${name}.json`));
  const { study } = await loadStudy({ ...file, json: { ...(file.json as object), ...change } });
  return runStudy({ ...study, replications: 2 }, { gambrel: "test", command: "test" });
}

function threeFactors(): Promise<StudyResults> {
  const factors = [
    { name: "places before evisceration", path: "line.evisceration.buffer", levels: [2, 5, 9] },
    { name: "places before opening", path: "line.opening.buffer", levels: [2, 5, 9] },
    { name: "walking between stations, each time", path: "crews.line.walking", levels: ["0 s", "3 s", "6 s"] },
  ];
  return changedStudy("studies/screening", { design: { factorial: { factors } } });
}

function manyPoints(): Promise<StudyResults> {
  const { json } = readInputFile(resolve(EXPERIMENTS, "studies/screening.json"));
  const { screening } = (json as { design: { screening: object } }).design;
  return changedStudy("studies/screening", { design: { screening: { ...screening, trajectories: 29 } } });
}

const RUNS: Record<string, () => Promise<StudyResults>> = {
  "first-plan/first-study": () => exampleStudy("first-plan/first-study"),
  "studies/one-more-operator": () => exampleStudy("studies/one-more-operator"),
  "studies/buffers": () => exampleStudy("studies/buffers"),
  "a day of ferncote": async () => exampleDay("ferncote"),
  "a week of ferncote": () => exampleWeek(),
};

/** Runs that have more to say than there is room for. */
const LARGE_RUNS: Record<string, () => Promise<StudyResults>> = {
  "twelve plans with names of forty letters": () =>
    changedStudy("studies/one-more-operator", { design: { list: LONG_NAMES } }),
  "all combinations of three levels of three factors": threeFactors,
  "a screening of two hundred points": manyPoints,
};

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
}, 60_000);
afterAll(() => browser.close());

async function opened(results: StudyResults, width: number): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height: 844 } });
  await page.setContent(renderReport(results));
  return page;
}

async function printedPages(page: Page): Promise<number> {
  const pdf = await page.pdf({ preferCSSPageSize: true });
  return pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)!.length;
}

test.each(Object.entries(LARGE_RUNS))(
  "the report of %s is two printed pages at most",
  async (_, run) => {
    const page = await opened(await run(), 1280);
    expect(await printedPages(page)).toBeLessThanOrEqual(2);
    await page.close();
  },
  120_000,
);

test.each([
  ["a plan", {}],
  ["a choice", { choice: true }],
  ["twelve plans with names of forty letters", { choice: true, names: LONG_NAMES.map(({ name }) => name) }],
])(
  "the report of what is not known of %s is two printed pages at most, and stays within a phone",
  async (_, asked) => {
    const doubt = seenDoubt(asked);
    const text = renderDoubtReport({ doubt, words: doubtWords(doubt) });
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await page.setContent(text);
    expect(await printedPages(page)).toBeLessThanOrEqual(2);
    // On the first screen, without scrolling: the answer, and which figure to measure.
    const measure = page.getByText(/^Measure first: /);
    expect((await measure.boundingBox())!.y).toBeLessThan(700);
    await page.setViewportSize({ width: 390, height: 844 });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(over).toBe(0);
    await page.close();
  },
  60_000,
);

describe.each(Object.entries(RUNS))("the report of %s", (_, run) => {
  let results: StudyResults;
  beforeAll(async () => {
    results = await run();
  }, 120_000);

  test("is two printed pages at most while its appendix is closed, and more once a part is open", async () => {
    const page = await opened(results, 1280);
    const closed = await printedPages(page);
    expect(closed).toBeLessThanOrEqual(2);
    expect(await page.locator("details.part[open]").count()).toBe(0);
    await page.getByRole("link", { name: "Results" }).click();
    expect(await page.locator("details.part[open] h2").allTextContents()).toEqual(["Results"]);
    expect(await page.locator("details.part[open] table").first().isVisible()).toBe(true);
    if (results.variants.length > 1) expect(await printedPages(page)).toBeGreaterThan(closed);
    await page.close();
  }, 60_000);

  test("stays within a phone, without a word broken inside, each figure with its heading", async () => {
    const page = await opened(results, 390);
    const found = await page.evaluate(() => ({
      over: document.documentElement.scrollWidth - window.innerWidth,
      // What a reader would have to swipe to see.
      pictures: [...document.querySelectorAll(".plot")].filter(
        (plot) => plot.checkVisibility() && plot.scrollWidth > plot.clientWidth,
      ).length,
      wide: [...document.querySelectorAll(".decision")].filter((table) => table.getBoundingClientRect().right > 390)
        .length,
      labels: [...document.querySelectorAll(".decision td:not(.none)")].filter(
        (cell) => getComputedStyle(cell, "::before").content.length < 4,
      ).length,
    }));
    expect(found).toEqual({ over: 0, pictures: 0, wide: 0, labels: 0 });
    await page.close();
  }, 60_000);

  test("speaks of every response that was asked on its first pages", async () => {
    const page = await opened(results, 1280);
    const text = (await page.locator("section.first").textContent())!.toLowerCase();
    const names: Record<string, RegExp> = {
      finish: /end of work|work ends|work on the line ended/,
      overtime: /overtime/,
      costPerHead: /cost a head/,
      headsPerHour: /throughput/,
      carcassesPerPersonHour: /carcasses per person-hour/,
      "queue.skinning.mean": /heads waiting before skinning/,
      "blocked.pre-loosening": /pre-loosening: cannot pass/,
      "p95.kill to chill": /kill to chill: 95/,
      "beyond.stun to stick": /stun to stick/,
    };
    // Of a week the days stand in a table; what is asked of each is far more than two sheets hold.
    const isTold = results.decision == null || results.plan.week !== undefined;
    const asked = isTold ? ["finish", "overtime"] : results.responses.map(({ key }) => key);
    for (const key of asked) expect(text, key).toMatch(names[key]!);
    await page.close();
  }, 60_000);
});
