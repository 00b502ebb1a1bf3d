import { beforeAll, expect, test } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { renderDayReport, renderReport } from "../../../viz/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";
import { whyDay, whyStudy } from "../../support/whyStudy.ts";

let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
});

const titles = (page: string) => [...page.matchAll(/<h2[^>]*>(.*?)<\/h2>/g)].map(([, title]) => title);

test("where the time went follows the answer, in words and in pictures for every variant", () => {
  const page = renderReport(results);
  expect(titles(page).slice(0, 3)).toEqual(["Answer", "Appendix", "Where the time went"]);
  expect(page).toMatch(/<ul><li>For .*? the line ran at the pace of /);
  // Each picture is there twice: wide, and for a telephone.
  expect(page.match(/<title[^>]*>What the line waited for until the end of work</g)).toHaveLength(2 * 3);
  expect(page.match(/<summary>The same for /g)).toHaveLength(2);
  expect(page).toContain("what is closed is not printed");
});

test("figures are numbered in the order in which they are read", () => {
  const numbers = [...renderReport(results).matchAll(/<b>Figure (\d+)\.<\/b>/g)].map(([, number]) => Number(number));
  expect(numbers).toEqual(numbers.map((_, index) => index + 1));
});

test("a table tells which stages bind in each variant", () => {
  const page = renderReport(results);
  const row = /<tr><th scope="row"><bdi>slower<\/bdi><\/th><td><bdi>(\w+)<\/bdi><span class="range">(.*?)<\/span>/.exec(
    page,
  );
  expect(row![1]).toBe("skinning");
  expect(row![2]).toMatch(/^9\d % \(/);
});

test("changes that were simulated come before where the time went", () => {
  const [info] = results.responses;
  const effort = { singles: 1, pairs: 0, searchDays: 8, ownDays: 40, firstDays: 4, secondDays: 10 };
  const words = ["Start with skinning: one more person ends work <b>12 min</b> earlier."];
  const advice = { response: info!, days: 20, changes: [], others: [], leftOut: [], effort, words };
  const page = renderReport({ ...results, advice });
  expect(titles(page).slice(0, 3)).toEqual(["Answer", "Appendix", "What each change is worth"]);
  expect(page).toContain("<li>Start with skinning: one more person ends work &lt;b&gt;12 min&lt;/b&gt; earlier.</li>");
  expect(page.indexOf("Start with skinning")).toBeLessThan(page.indexOf("<h3>Where the time went</h3>"));
  expect(page).toContain("what a change is worth is told above");
});

test("one day tells it without intervals; a study that did without has no such part", () => {
  expect(renderDayReport(whyDay())).toMatch(/On this one day, the longest first\./);
  expect(titles(renderReport(syntheticStudy()))).not.toContain("Where the time went");
});

test("nobody is told that breaks, bleeding or chilling are a reserve, nor what a change would bring", () => {
  const page = renderReport(results);
  expect(page).toContain("Do not shorten breaks, bleeding or chilling to gain time");
  expect(page).toContain("it simulates the obvious changes");
  expect(page).not.toContain("One second less");
});
