import { describe, expect, it } from "vitest";
import { scaled } from "../../../../../sim/asked/plan/uncertain/scaled.ts";

describe("scaled", () => {
  it.each([
    ["4.2 s", 1.5, "6.3 s"],
    ["620 /h", 0.9, "558 /h"],
    ["2.5 %", 2, "5 %"],
    ["18 EUR/h", 1.1, "19.8 EUR/h"],
    ["-0.05 EUR", 2, "-0.1 EUR"],
    ["3.5m/min", 2, "7m/min"],
    [0.3, 1.1, 0.33],
    [1, 1.3, 1.3],
    [40, 1.033, 41],
    [2, 0.1, 1],
    [{ lognormal: { mean: "5 s", cv: 0.3 } }, 1.2, { lognormal: { mean: "6 s", cv: 0.3 } }],
    [{ normal: { mean: "5 s", sd: "1 s" } }, 2, { normal: { mean: "10 s", sd: "2 s" } }],
    [{ empirical: ["4 s", "6 s"] }, 0.5, { empirical: ["2 s", "3 s"] }],
    [{ erlang: { mean: "4 s", k: 3 } }, 2, { erlang: { mean: "8 s", k: 3 } }],
  ])("multiplies %j by %d", (written, factor, expected) => {
    expect(scaled(written, factor)).toEqual({ value: expected, fault: null });
  });

  it.each([
    ["06:00", /time of day/],
    ["4 degC", /temperature/],
    ["manual", /no figure/],
    ["2nd cutter", /no figure/],
    [undefined, /nothing is written there/],
    [true, /true/],
    [null, /null/],
    [["4 s"], /list/],
    [{ mean: "5 s", cv: 0.3 }, /several figures/],
    [{ name: "jam", uptime: "5 min" }, /several figures/],
    [{ empirical: { csv: "t.csv", column: "a", unit: "s" } }, /in a table/],
    [{ lognormal: { mean: "five", cv: 0.3 } }, /no figure/],
  ])("refuses %j", (written, words) => {
    const { value, fault } = scaled(written, 1.1);
    expect(value).toBeNull();
    expect(fault!.found).toMatch(words);
    expect(fault!.remedy).not.toBe("");
  });
});
