import { describe, expect, it } from "vitest";
import { shareInterval } from "../../../../sim/maths/statistics/index.ts";

describe("shareInterval (Wilson 1927)", () => {
  it.each([
    // SciPy, proportion_ci(method="wilson"); 81 of 263 is also the example of Newcombe 1998 (from memory: 0.2553, 0.3662).
    [0, 50, 0.95, 0, 0.071347599],
    [50, 50, 0.95, 0.928652401, 1],
    [7, 40, 0.95, 0.087454137, 0.3194999],
    [81, 263, 0.95, 0.25528852, 0.366209577],
    [1, 1000, 0.99, 0.000117416354, 0.008460566222],
  ])("agrees with SciPy for %i of %i at %s", (count, n, confidence, low, high) => {
    const found = shareInterval(count, n, confidence)!;
    expect(found.low).toBeCloseTo(low, 8);
    expect(found.high).toBeCloseTo(high, 8);
  });

  it("has exact ends when no case or every case was hit", () => {
    expect(shareInterval(0, 9, 0.95)!.low).toBe(0);
    expect(shareInterval(9, 9, 0.95)!.high).toBe(1);
  });

  it("has nothing to say of no cases and refuses impossible counts", () => {
    expect(shareInterval(0, 0, 0.95)).toBeNull();
    expect(() => shareInterval(3, 2, 0.95)).toThrow(RangeError);
  });
});
