import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readShare, SHARE_PATTERN } from "../../../../sim/text/units/readShare.ts";

describe("readShare", () => {
  it.each([
    ["2.5 %", 0.025],
    ["0.2%", 0.002],
    ["100 %", 1],
    ["0 %", 0],
    [0, 0],
    [0.25, 0.25],
    [1, 1],
  ])("reads %j as %d", (written, share) => {
    expect(readShare(written)).toEqual({ value: share, fault: null });
  });

  it.each([
    [2, "2 is out of range"],
    [-0.1, "-0.1 is out of range"],
    ["101 %", '"101 %" is out of range'],
    ["-1 %", '"-1 %" is out of range'],
    ["0.5", '"0.5" is not a share'],
    ["half", '"half" is not a share'],
    [Number.NaN, "NaN is not a share"],
    [true, "true is not a share"],
    [undefined, "nothing is not a share"],
  ])("refuses %j: %s", (written, found) => {
    expect(readShare(written).fault).toEqual({
      found,
      allowed: "a share from 0 to 1, or from 0 % to 100 %",
      remedy: 'write for example "2.5 %" or 0.025',
    });
  });

  it("reads every percentage that its published pattern accepts, up to 100", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (percent) => {
        expect(`${percent} %`).toMatch(new RegExp(SHARE_PATTERN, "u"));
        expect(readShare(`${percent} %`).value).toBe(percent / 100);
      }),
      { seed: 2 },
    );
  });
});
