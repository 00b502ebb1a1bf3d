import { expect, test } from "vitest";
import { shareEstimate, spanEstimate, timesEstimate } from "../../../viz/words/index.ts";

const of = (mean: number, halfWidth: number | null) => ({
  ...{ n: 20, mean, sd: 1, halfWidth, min: 0, max: 1 },
  low: halfWidth === null ? null : mean - halfWidth,
  high: halfWidth === null ? null : mean + halfWidth,
});

test("a span has one unit for mean and interval, even where its ends would take two", () => {
  expect(spanEstimate(of(17_640, 720))).toBe("4 h 54 (4 h 42 to 5 h 06)");
});

test("no interval of time or share reaches where there is nothing", () => {
  expect(spanEstimate(of(600, 1200))).toBe("10 min (0 to 30 min)");
  expect(shareEstimate(of(0.99, 0.03))).toBe("99 % (96 to 100 %)");
});

test("a single day has its value alone", () => {
  expect(spanEstimate(of(600, null))).toBe("10 min");
  expect(shareEstimate(of(0.5, null))).toBe("50 %");
});

test("times a negative number, low and high change places", () => {
  expect(timesEstimate(of(4, 1), -2)).toMatchObject({ mean: -8, low: -10, high: -6, halfWidth: 2, sd: 2 });
});
