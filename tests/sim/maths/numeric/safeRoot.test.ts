import { describe, expect, it } from "vitest";
import { safeRoot } from "../../../../sim/maths/numeric/safeRoot.ts";

describe("safeRoot", () => {
  it("finds a root to the last bits, whichever end is negative", () => {
    expect(safeRoot((x) => [x * x - 2, 2 * x], 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(safeRoot((x) => [2 - x * x, -2 * x], 0, 2)).toBeCloseTo(Math.SQRT2, 15);
  });

  it("halves the bracket where Newton's step runs away", () => {
    // From 3 on Newton's steps of the arctangent grow without end.
    expect(safeRoot((x) => [Math.atan(x), 1 / (1 + x * x)], -3, 100)).toBeCloseTo(0, 12);
  });

  it("ends where the slope is no help at all", () => {
    expect(safeRoot((x) => [x < 0.3 ? -1 : 1, 0], 0, 1)).toBeCloseTo(0.3, 12);
  });
});
