import { expect, test } from "vitest";
import { spanWords } from "../../../viz/words/index.ts";

test("a span of time takes the unit that suits it", () => {
  expect([10, 6.25, 900, 7800, 7810, 36_000].map(spanWords)).toEqual([
    "10 s",
    "6.25 s",
    "15 min",
    "130 min",
    "130 min",
    "10 h",
  ]);
});

test("no limit is said in words", () => {
  expect(spanWords(Number.POSITIVE_INFINITY)).toBe("no limit");
});
