import { resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadStudy, readInputFile } from "../../sim/cli/inputs.ts";
import { runStudy } from "../../sim/days/run/index.ts";
import type { StudyResults } from "../../viz/contract.ts";
import { renderReport } from "../../viz/index.ts";
import { openBrowser } from "../support/browser.ts";
import { exampleDay } from "../support/exampleDay.ts";

/** Three days show how a report is laid out; nobody decides by them. */
const DAYS = 3;
const EXPERIMENTS = resolve(import.meta.dirname, "../../experiments");

async function exampleStudy(name: string): Promise<StudyResults> {
  const { study } = await loadStudy(readInputFile(resolve(EXPERIMENTS, `${name}.json`)));
  return runStudy({ ...study, replications: DAYS }, { gambrel: "test", command: "test" });
}

const RUNS: Record<string, () => Promise<StudyResults>> = {
  "first-plan/first-study": () => exampleStudy("first-plan/first-study"),
  "studies/one-more-operator": () => exampleStudy("studies/one-more-operator"),
  "studies/buffers": () => exampleStudy("studies/buffers"),
  "a day of ferncote": async () => exampleDay("ferncote"),
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
      wide: [...document.querySelectorAll(".decision")].filter((table) => table.getBoundingClientRect().right > 390)
        .length,
      labels: [...document.querySelectorAll(".decision td:not(.none)")].filter(
        (cell) => getComputedStyle(cell, "::before").content.length < 4,
      ).length,
    }));
    expect(found).toEqual({ over: 0, wide: 0, labels: 0 });
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
    const asked = results.decision == null ? ["finish", "overtime"] : results.responses.map(({ key }) => key);
    for (const key of asked) expect(text, key).toMatch(names[key]!);
    await page.close();
  }, 60_000);
});
