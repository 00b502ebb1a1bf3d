import { describe, expect, it } from "vitest";
import type { ResponseInfo } from "../../../../sim/day/observations/index.ts";
import { formatDifference, formatEstimate } from "../../../../sim/text/units/index.ts";

const info = (format: ResponseInfo["format"], unit = ""): ResponseInfo => {
  return { key: "k", label: "l", unit, format, better: null };
};

describe("formatEstimate", () => {
  it.each([
    [{ mean: 0.16812, low: 0.16778, high: 0.16846 }, info("share"), ["16.81 %", "16.78 to 16.85 %"]],
    [{ mean: 0, low: 0, high: 0.0881 }, info("share"), ["0 %", "0 to 9 %"]],
    [
      { mean: 611.94, low: 608.1, high: 615.8 },
      info("number", "carcasses/h"),
      ["612 carcasses/h", "608 to 616 carcasses/h"],
    ],
    [{ mean: 8732, low: 8201, high: 9263 }, info("number", "kg"), ["8\u202f730 kg", "8\u202f200 to 9\u202f260 kg"]],
    [{ mean: 7100, low: 7050, high: 7300 }, info("duration"), ["1 h 58", "1 h 58 to 2 h 02"]],
    [{ mean: 119, low: 115, high: 130 }, info("duration"), ["1.98 min", "1.92 to 2.17 min"]],
    [{ mean: 5, low: 5, high: 5 }, info("number", "heads"), ["5 heads", "5 to 5 heads"]],
    [{ mean: 5.25, low: null, high: null }, info("number", "heads"), ["5.25 heads", ""]],
    [{ mean: 0.3, low: 0.3 - 1e-16, high: 0.3 + 1e-16 }, info("share"), ["30 %", "30 to 30 %"]],
  ] as const)("writes %j", (ends, about, text) => {
    expect(formatEstimate(ends, about, 0)).toEqual(text);
  });

  it("writes times of day to the minute", () => {
    expect(formatEstimate({ mean: 600, low: 540, high: 690 }, info("clock"), 6 * 3600)).toEqual([
      "06:10",
      "06:09 to 06:12",
    ]);
  });
});

describe("formatDifference", () => {
  it("writes an interval that leaves 0 out so that it is seen", () => {
    const heads = info("number", "heads");
    expect(formatDifference({ mean: 2.04, low: 0.04, high: 4.04 }, heads)[1]).toBe("+0.04 to +4.04 heads");
    expect(formatDifference({ mean: 1.96, low: -0.04, high: 3.96 }, heads)).toEqual(["+2 heads", "0 to +4 heads"]);
  });
});
