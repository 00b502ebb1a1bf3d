import { expect, test } from "vitest";
import { differenceWords, responseFormat } from "../../../viz/words/index.ts";

const FORMAT = responseFormat({ key: "k", label: "L", unit: "heads/h", format: "number", better: "more" }, 0);
const SHOWN = {
  ...{ n: 20, mean: 36.3, sd: 2.7, halfWidth: 1.3, low: 35, high: 37.6, min: 30, max: 40 },
  ...{ relativeLow: null, relativeHigh: null, shown: true, words: "" },
  ...{ p: 0.001, holmP: 0.003, bonferroniP: 0.003, benjaminiHochbergP: 0.003, comparisons: 3 },
  ...{ familyLow: 34.2, familyHigh: 38.4, joint: false },
};

test("a shown difference is said with direction, size, interval and confidence", () => {
  expect(differenceWords(SHOWN, FORMAT, 0.95).sentence).toBe(
    "36.3 heads/h more than the base case (+35.0 to +37.6 at 95 %)",
  );
});

test("a difference that is not shown is said to be not distinguishable, in words", () => {
  const words = differenceWords({ ...SHOWN, mean: 1, low: -0.3, high: 2.3, shown: false }, FORMAT, 0.9);
  expect(words.sentence).toBe("not distinguishable from the base case at 90 % (\u22120.3 to +2.3)");
  expect(words.verdict).toBe("not shown");
});

test("a variant that changed nothing at all is said to be the same", () => {
  const words = differenceWords({ ...SHOWN, mean: 0, halfWidth: 0, low: 0, high: 0, shown: false }, FORMAT, 0.95);
  expect(words.sentence).toBe("the same as the base case in all 20 replications");
});

test("one pair of days shows nothing, and says so", () => {
  const words = differenceWords({ ...SHOWN, n: 1, halfWidth: null, low: null, high: null, shown: false }, FORMAT, 0.95);
  expect(words.sentence).toContain("one day has no interval and shows nothing");
  expect(words.interval).toBe("");
});

test("no pair of values is not a difference of nothing", () => {
  expect(differenceWords(undefined, FORMAT, 0.95).verdict).toBe("not known");
});

test("one of several comparisons is told with the interval that holds for all at once", () => {
  const words = differenceWords({ ...SHOWN, joint: true }, FORMAT, 0.95);
  expect(words.sentence).toBe(
    "36.3 heads/h more than the base case (+34.2 to +38.4 at 95 % for all 3 comparisons at once)",
  );
  expect(words.interval).toBe("+34.2 to +38.4");
});

test("a verdict that the interval does not show is given its reason", () => {
  const wide = differenceWords({ ...SHOWN, joint: true, familyLow: -0.4 }, FORMAT, 0.95);
  expect(wide.sentence).toMatch(/more than the base case \(.*; Holm's test shows it\)$/);
  const chance = differenceWords({ ...SHOWN, shown: false }, FORMAT, 0.95);
  expect(chance.sentence).toMatch(/^not distinguishable .*; not enough among 3 comparisons\)$/);
});
