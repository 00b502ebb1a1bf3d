import { describe, expect, it } from "vitest";
import { formatClock, writeClock } from "../../../../sim/text/units/formatClock.ts";

// Hours 00 to 23 and minutes in two digits: ISO 8601-1:2019, 5.3 (extended format), from memory.
describe("formatClock", () => {
  it.each([
    [0, "00:00"],
    [21600, "06:00"],
    [21629, "06:00"],
    [21631, "06:01"],
    [3599.9, "01:00"],
    [86399, "00:00 +1 d"],
    [91800, "01:30 +1 d"],
    [180000, "02:00 +2 d"],
    [-3600, "23:00 \u22121 d"],
    [Number.NaN, "not known"],
  ])("writes %d seconds after midnight as %s", (seconds, text) => {
    expect(formatClock(seconds)).toBe(text);
  });

  it("writes seconds where they are asked for", () => {
    expect(formatClock(6 * 3600 + 5 * 60 + 7, true)).toBe("06:05:07");
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
