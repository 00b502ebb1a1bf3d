import { expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { differenceWords } from "../../../../sim/days/results/differenceWords.ts";

function words(mean: number, half: number, format: ResponseInfo["format"], unit = "", confidence = 0.95): string {
  const info: ResponseInfo = { key: "k", label: "l", unit, format, better: null };
  const difference = { n: 9, mean, sd: 1, halfWidth: half, low: mean - half, high: mean + half, min: 0, max: 0 };
  return differenceWords(difference, confidence, info);
}

it.each([
  [3, 1, "number", "heads", "3.0 heads more than today's plan (2.0 to 4.0 heads at 95 %; on the same 9 days)."],
  [-3, 1, "number", "heads", "3.0 heads less than today's plan (2.0 to 4.0 heads at 95 %; on the same 9 days)."],
  [-0.5, 0.25, "share", "", "50 percentage points less than today's plan (25 to 75 percentage points at 95 %; "],
  [600, 60, "clock", "", "10.0 min later than today's plan (9.0 to 11.0 min at 95 %; on the same 9 days)."],
  [-600, 60, "duration", "s", "10.0 min less than today's plan (9.0 to 11.0 min at 95 %; on the same 9 days)."],
] as const)("says %s +- %s as %s", (mean, half, format, unit, text) => {
  expect(words(mean, half, format, unit)).toContain(text);
});

it("counts an interval that just touches 0 as one that holds it", () => {
  expect(words(1, 1, "number", "heads")).toMatch(/^No difference from today's plan shown/);
});

it("says how large a difference may be that is not shown: the end of its interval that is further from 0", () => {
  expect(words(-0.5, 1, "number", "heads")).toBe(
    "No difference from today's plan shown (less than 1.5 heads at 95 %; on the same 9 days).",
  );
});

it("says the confidence it was asked for", () => {
  expect(words(3, 1, "number", "heads", 0.995)).toContain("at 99.5 %");
});
