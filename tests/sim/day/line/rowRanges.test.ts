import { describe, expect, it } from "vitest";
import { rowRanges } from "../../../../sim/day/line/rowRanges.ts";

describe("rowRanges", () => {
  it("adds up lengths, so that group i has the rows from its entry to the next", () => {
    expect(Array.from(rowRanges([2, 0, 3]))).toEqual([0, 2, 2, 5]);
  });

  it("of no groups has one entry", () => {
    expect(Array.from(rowRanges([]))).toEqual([0]);
  });
});
