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
    "36.3 heads/h more than today's plan (35.0 to 37.6 at 95 %)",
  );
});

test("a difference that is not shown is said to be not shown, in words", () => {
  const words = differenceWords({ ...SHOWN, mean: 1, low: -0.3, high: 2.3, shown: false }, FORMAT, 0.9);
  expect(words.sentence).toBe("no difference from today's plan shown (less than 2.3 heads/h at 90 %)");
  expect(words.verdict).toBe("not shown");
});

test("a variant that changed nothing at all is said to be the same", () => {
  const words = differenceWords({ ...SHOWN, mean: 0, halfWidth: 0, low: 0, high: 0, shown: false }, FORMAT, 0.95);
  expect(words.sentence).toBe("the same as today's plan on all 20 simulated days");
});

test("a difference downwards is told by its size, and its range without signs", () => {
  const words = differenceWords({ ...SHOWN, mean: -36.3, low: -37.6, high: -35 }, FORMAT, 0.95);
  expect(words.brief).toBe("36.3 heads/h less than today's plan (35.0 to 37.6)");
});

test("one pair of days shows nothing, and says so", () => {
  const words = differenceWords({ ...SHOWN, n: 1, halfWidth: null, low: null, high: null, shown: false }, FORMAT, 0.95);
  expect(words.sentence).toContain("on one day, which proves nothing about other days");
  expect(words.interval).toBe("");
});

test("no pair of values is not a difference of nothing", () => {
  expect(differenceWords(undefined, FORMAT, 0.95).verdict).toBe("not known");
});

test("one of several comparisons is told with the interval that allows for all", () => {
  const words = differenceWords({ ...SHOWN, joint: true }, FORMAT, 0.95);
  expect(words.sentence).toBe("36 heads/h more than today's plan (34 to 38 at 95 %, allowing for 3 changes compared)");
  expect(words.brief).toBe("36 heads/h more than today's plan (34 to 38)");
  expect(words.interval).toBe("+34 to +38");
});

test("an end next to 0 is written so finely that it is not rounded to it", () => {
  const words = differenceWords({ ...SHOWN, mean: 2.04, low: 0.04, high: 4.04 }, FORMAT, 0.95);
  expect(words.interval).toBe("+0.04 to +4.04");
});
