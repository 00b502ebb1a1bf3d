import { describe, expect, it } from "vitest";
import { formatClock, writeClock } from "../../../sim/units/formatClock.ts";

describe("formatClock", () => {
  it.each([
    [0, "00:00"],
    [21600, "06:00"],
    [21629, "06:00"],
    [21631, "06:01"],
    [86399, "00:00 (+1 d)"],
    [91800, "01:30 (+1 d)"],
    [180000, "02:00 (+2 d)"],
  ])("writes %d seconds after midnight as %s", (seconds, text) => {
    expect(formatClock(seconds)).toBe(text);
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d", (seconds) => {
    expect(() => formatClock(seconds)).toThrow(RangeError);
  });
});

describe("writeClock", () => {
  it.each([
    [21600, "06:00"],
    [91800, "25:30"],
    [21630, "06:00:30"],
  ])("writes %d seconds after midnight as plan files do: %s", (seconds, text) => {
    expect(writeClock(seconds)).toBe(text);
  });

  it("refuses a time before midnight", () => {
    expect(() => writeClock(-1)).toThrow(RangeError);
  });
});
