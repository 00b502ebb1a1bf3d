import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatDuration, readQuantity, time } from "../../../../sim/text/units/index.ts";

describe("formatDuration", () => {
  it.each([
    [0, "0 s"],
    [0.35, "0.35 s"],
    [4.2, "4.2 s"],
    [59.94, "59.9 s"],
    [59.96, "1 min"],
    [60, "1 min"],
    [150, "2 min 30 s"],
    [3599.4, "59 min 59 s"],
    [3599.6, "1 h"],
    [3900, "1 h 05"],
    [86369, "23 h 59"],
    [86371, "1 d"],
    [183600, "2 d 3 h"],
    [-90, "−1 min 30 s"],
    [Number.POSITIVE_INFINITY, "no limit"],
  ])("writes %d s as %s", (seconds, text) => {
    expect(formatDuration(seconds)).toBe(text);
  });

  it.each([Number.NaN, Number.NEGATIVE_INFINITY])("refuses %d", (seconds) => {
    expect(() => formatDuration(seconds)).toThrow(RangeError);
  });

  it("stays within half a unit of its smaller part", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (seconds) => {
        const parts = formatDuration(seconds).match(/[\d.e-]+ (?:min|s|h|d)/gu) as string[];
        const total = parts.reduce((sum, part) => sum + (readQuantity(time, part).value as number), 0);
        const allowed = seconds < 60 ? 0.05 : seconds < 3600 ? 0.5 : seconds < 86400 ? 30 : 1800;
        expect(Math.abs(total - seconds)).toBeLessThanOrEqual(allowed);
      }),
      { seed: 4 },
    );
  });
});
