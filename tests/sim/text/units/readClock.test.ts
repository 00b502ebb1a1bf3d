import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOCK_PATTERN, writeClock } from "../../../../sim/text/units/index.ts";
import { readClock } from "../../../../sim/text/units/readClock.ts";

describe("readClock", () => {
  it.each([
    ["00:00", 0],
    ["06:00", 21600],
    ["6:05", 21900],
    ["06:00:30", 21630],
    ["24:00", 86400],
    ["25:30", 91800],
    ["99:59:59", 359999],
  ])("reads %s as %d seconds after midnight", (written, seconds) => {
    expect(readClock(written)).toEqual({ value: seconds, fault: null });
    expect(written).toMatch(new RegExp(CLOCK_PATTERN, "u"));
  });

  it.each(["6", "6:0", "06:60", "06:00:60", "6.30", "-01:00", "6 am", "100:00", "06:00 ", 6, null, undefined])(
    "refuses %j with an example",
    (written) => {
      const { value, fault } = readClock(written);
      expect(value).toBeNull();
      expect(fault?.found).toContain("is not a clock time");
      expect(fault?.remedy).toBe('write for example "06:00"');
    },
  );

  it("reads back whatever writeClock wrote", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359_999 }), (seconds) => {
        expect(readClock(writeClock(seconds)).value).toBe(seconds);
      }),
      { seed: 1 },
    );
  });
});
