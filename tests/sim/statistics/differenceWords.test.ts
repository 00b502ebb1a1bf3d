import { expect, it } from "vitest";
import type { ResponseInfo } from "../../../sim/observations/index.ts";
import { differenceWords } from "../../../sim/statistics/differenceWords.ts";

function words(mean: number, half: number, format: ResponseInfo["format"], unit = "", confidence = 0.95): string {
  const info: ResponseInfo = { key: "k", label: "l", unit, format, better: null };
  const difference = { n: 9, mean, sd: 1, halfWidth: half, low: mean - half, high: mean + half, min: 0, max: 0 };
  return differenceWords(difference, confidence, info);
}

it.each([
  [3, 1, "number", "heads", "3 heads more than the base case (95 % interval +2 to +4 heads, 9 paired replications)."],
  [-3, 1, "number", "heads", "3 heads less than the base case (95 % interval -4 to -2 heads, 9 paired replications)."],
  [
    -0.5,
    0.25,
    "share",
    "",
    "50 percentage points less than the base case (95 % interval -75 to -25 percentage points, ",
  ],
  [600, 60, "clock", "", "10 min later than the base case (95 % interval +9 to +11 min, 9 paired replications)."],
  [-600, 60, "duration", "s", "10 min less than the base case (95 % interval -11 to -9 min, 9 paired replications)."],
] as const)("says %s +- %s as %s", (mean, half, format, unit, text) => {
  expect(words(mean, half, format, unit)).toContain(text);
});

it("counts an interval that just touches 0 as one that holds it", () => {
  expect(words(1, 1, "number", "heads")).toMatch(/^Not distinguishable/);
});

it("says the confidence it was asked for", () => {
  expect(words(3, 1, "number", "heads", 0.995)).toContain("99.5 % interval");
});
