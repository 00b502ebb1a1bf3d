import { beforeAll, expect, test } from "vitest";
import type { StudyResults, Why } from "../../../viz/contract.ts";
import { slopeView } from "../../../viz/pictures/index.ts";
import { slopeStudy, whyStudy } from "../../support/whyStudy.ts";

let results: StudyResults;
let why: Why;
beforeAll(async () => {
  results = await slopeStudy();
  why = results.variants[0]!.why!;
});

const viewWith = (change: Partial<Why>) => slopeView(results, results.variants[0]!, { ...why, ...change });

test("what matters most comes first, in seconds for a tenth of a second, near today's value and no further", () => {
  const { rows, subtitle } = viewWith({});
  const slope = why.slopes.find(({ stage, parameter }) => stage === "skinning" && parameter === "cycle time")!;
  expect(rows[0]!.name).toBe("skinning: cycle time");
  expect(rows[0]!.secondsPerTenth).toBeCloseTo(slope.slope.mean / 10, 9);
  expect(rows[0]!.text).toMatch(/^\+[\d.]+ s \(\+[\d.]+ to \+[\d.]+ s\)$/);
  expect(subtitle).toContain("what a larger one is worth, only trying it tells");
  expect(rows.map(({ text }) => text).join(" ")).not.toContain("10 %");
});

test("a slope that one run cannot tell has no figure; its reason stands below the picture and in its description", () => {
  const { rows, footnotes, description } = viewWith({});
  expect(rows.map(({ name }) => name)).not.toContain("stunning: cycle time");
  expect(footnotes).toEqual([
    "No figure for stunning: cycle time; stunning: uptime (jam), because stunning breaks down: more work, or less time between stops, adds whole stops, which one day cannot show.",
  ]);
  expect(description).toContain(footnotes[0]);
});

test("where one reason stands against all slopes, it is said once instead of the picture", async () => {
  const broken = await whyStudy();
  const view = slopeView(broken, broken.variants[0]!, broken.variants[0]!.why!);
  expect(view.rows).toEqual([]);
  expect(view.nothing).toBe(
    "What small changes of each time would do is not given, because breaks begin at an hour: a head that just misses one waits for all of it. To see what a change is worth, simulate it.",
  );
  expect(view.description).toBe(view.nothing);
});

test("without any time that has a mean it says so", () => {
  expect(viewWith({ slopes: [], withheldSlopes: [] }).description).toBe("No time of this plan has a slope.");
});
