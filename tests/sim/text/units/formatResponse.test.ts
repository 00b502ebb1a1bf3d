import { describe, expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { formatEstimate, formatRange, formatResponse, formatSpan } from "../../../../sim/text/units/index.ts";

function info(format: ResponseInfo["format"], unit = ""): ResponseInfo {
  return { key: "key", label: "label", unit, format, better: null };
}

describe("formatResponse", () => {
  it.each([
    [612.34, "612 carcasses/h"],
    [61.234, "61.2 carcasses/h"],
    [5860, "5\u202f860 carcasses/h"],
    [0, "0 carcasses/h"],
    [-0, "0 carcasses/h"],
    [0.04567, "0.046 carcasses/h"],
    [1e-9, "0.00000 carcasses/h"],
    [-1e-9, "0.00000 carcasses/h"],
  ])("shows %s with its unit", (value, text) => {
    expect(formatResponse(value, info("number", "carcasses/h"), 0)).toBe(text);
  });

  it.each([
    [0, "06:00"],
    [9 * 3600 + 42 * 60 + 31, "15:43"],
    [17 * 3600 + 59 * 60 + 59, "00:00 +1 d"],
    [-3600, "05:00"],
    [-7 * 3600, "23:00 \u22121 d"],
  ])("shows %s s after 06:00 as a time of day", (value, text) => {
    expect(formatResponse(value, info("clock"), 6 * 3600)).toBe(text);
  });

  it.each([
    [0, "0 s"],
    [95.25, "95.3 s"],
    [2112, "35.2 min"],
    [7199, "120 min"],
    [9000, "2 h 30"],
    [20000, "5 h 33"],
    [-9000, "\u22122 h 30"],
    [-600, "\u221210 min"],
  ])("shows a duration of %s s in the unit that suits it", (value, text) => {
    expect(formatResponse(value, info("duration", "s"), 0)).toBe(text);
  });

  it("writes a long span in hours and minutes, as finely as its interval allows", () => {
    const span = info("duration", "s");
    expect(formatEstimate({ mean: 17_640, low: 16_920, high: 18_360 }, span, 0)).toEqual([
      "4 h 54",
      "4 h 42 to 5 h 06",
    ]);
    expect(formatEstimate({ mean: 7800, low: 6000, high: 9600 }, span, 0)).toEqual(["2 h 10", "1 h 40 to 2 h 40"]);
    expect(formatEstimate({ mean: 3600, low: 0, high: 7200 }, span, 0)).toEqual(["1 h 00", "0 min to 2 h 00"]);
    expect(formatEstimate({ mean: 9000, low: 8988, high: 9012 }, span, 0)).toEqual(["150.0 min", "149.8 to 150.2 min"]);
  });

  it("shows a share in per cent", () => {
    expect(formatResponse(0.1234, info("share"), 0)).toBe("12.3 %");
  });
});

describe("formatSpan", () => {
  it("gives a difference its sign, and none to zero", () => {
    expect(formatSpan(12.34, info("number", "heads"))).toBe("+12.3 heads");
    expect(formatSpan(-12.34, info("number", "heads"))).toBe("\u221212.3 heads");
    expect(formatSpan(0, info("number", "heads"))).toBe("0 heads");
    expect(formatSpan(5, info("number", "heads"), "plain")).toBe("5 heads");
  });

  it("never shows a difference of two times of day as a time of day", () => {
    expect(formatSpan(630, info("clock"))).toBe("+10.5 min");
  });

  it("calls a difference of shares percentage points", () => {
    expect(formatSpan(-0.0123, info("share"))).toBe("\u22121.23 percentage points");
  });
});

describe("formatRange", () => {
  it.each([
    ["333.0 carcasses/h", "339.1 carcasses/h", "333.0 to 339.1 carcasses/h"],
    ["95.3 s", "2.50 min", "95.3 s to 2.50 min"],
    ["07:21", "07:30", "07:21 to 07:30"],
    ["23:50", "00:10 +1 d", "23:50 to 00:10 +1 d"],
  ])("joins %j and %j", (low, high, text) => {
    expect(formatRange(low, high)).toBe(text);
  });
});
