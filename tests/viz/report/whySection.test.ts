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

test("what to change first follows the answer, in ranked words and in pictures for every variant", () => {
  const page = renderReport(results);
  expect(titles(page).slice(1, 3)).toEqual(["Answer", "What to change first"]);
  expect(page).toMatch(/<ol><li>\w+ binds /);
  expect(page.match(/<title[^>]*>What the end of work was owed to</g)).toHaveLength(3);
  expect(page.match(/<summary>The same for /g)).toHaveLength(2);
  expect(page).toContain("what is folded is not printed");
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

test("tried changes speak in the place of what to look at", () => {
  const [info] = results.responses;
  const advice = { response: info!, days: 20, changes: [], words: ["One person more is worth <b>12 min</b>."] };
  const page = renderReport({ ...results, advice });
  expect(page).toContain("<li>One person more is worth &lt;b&gt;12 min&lt;/b&gt;.</li>");
  expect(page).not.toContain("Look first at");
});

test("one day tells it without intervals; a study that did without has no such part", () => {
  expect(renderDayReport(whyDay())).toMatch(/owed to on this one day/);
  expect(titles(renderReport(syntheticStudy()))).not.toContain("What to change first");
});

test("nobody is told that breaks, bleeding or chilling are a reserve", () => {
  expect(renderReport(results)).toContain("they are no reserve");
});
