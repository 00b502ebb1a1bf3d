import { beforeAll, expect, test } from "vitest";
import type { StudyResults } from "../../../viz/contract.ts";
import { bindingView } from "../../../viz/pictures/index.ts";
import { whyDay, whyStudy } from "../../support/whyStudy.ts";

let results: StudyResults;
beforeAll(async () => {
  results = await whyStudy();
});

const viewOf = (found: StudyResults, index: number) =>
  bindingView(found, found.variants[index]!, found.variants[index]!.why!);

test("the longest comes first, each part with its interval, and they add up to the end of work", () => {
  const { rows } = viewOf(results, 1);
  const { why } = results.variants[1]!;
  expect(rows[0]).toMatchObject({ stage: "skinning", cause: "its work" });
  expect(rows[0]!.low).toBeLessThan(rows[0]!.seconds);
  const sum = rows.reduce((total, { seconds }) => total + seconds, 0);
  expect(sum / why!.total.mean).toBeGreaterThan(0.98);
  expect(sum / why!.total.mean).toBeLessThan(1 + 1e-9);
});

test("what is too little for a row of its own is told together", () => {
  const { why } = results.variants[0]!;
  const many = Array.from({ length: 5 }, () => why!.parts)
    .flat()
    .slice(0, 20);
  const total = { ...why!.total, mean: many.reduce((sum, { seconds }) => sum + seconds.mean, 0) };
  const view = bindingView(results, results.variants[0]!, { ...why!, parts: many, total });
  expect(view.rows).toHaveLength(12);
  expect(view.footnote).toMatch(/^All else together: .* %\.$/);
});

test("a variant's picture says over how many days, a single day's that there is no interval", () => {
  expect(viewOf(results, 1).subtitle).toMatch(/^“slower”, mean over 4 simulated days with its 95 % interval\./);
  const day = viewOf(whyDay(), 0);
  expect(day.subtitle).toMatch(/^One day, no interval\./);
  expect(day.rows[0]).toMatchObject({ low: null, high: null });
});
