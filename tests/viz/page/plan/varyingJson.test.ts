import { describe, expect, it } from "vitest";
import { cvOf, meanSecondsOf, withCv, withMeanSeconds } from "../../../../viz/page/plan/varyingJson.ts";

const limits = (family: string, min: string, max: string, mode?: string) => ({
  [family]: { min, max, ...(mode && { mode }) },
});

describe("a varying time as a plan writes it", () => {
  it.each<[string, unknown, number | null]>([
    ["always the same", "2 min", 120],
    ["by its mean", { gamma: { mean: "4 s", cv: 0.5 } }, 4],
    ["uniform", limits("uniform", "2 s", "6 s"), 4],
    ["triangular", limits("triangular", "2 s", "9 s", "4 s"), 5],
    ["pert", limits("pert", "2 s", "8 s", "5 s"), 5],
    ["measured", { empirical: ["4 s", "6 s"] }, 5],
    ["in a file", { empirical: { csv: "a.csv", column: "b" } }, null],
    ["without a unit", { gamma: { mean: 4, cv: 0.5 } }, null],
    ["two families at once", { gamma: { mean: "4 s", cv: 1 }, exponential: { mean: "4 s" } }, null],
    ["no time at all", 7, null],
  ])("%s: its mean is told where it can be", (_, written, mean) => {
    expect(meanSecondsOf(written)).toBe(mean);
  });

  it("is stretched as a whole: another mean, the same coefficient of variation", () => {
    expect(withMeanSeconds({ lognormal: { mean: "4 s", cv: 0.3 } }, 6)).toEqual({
      lognormal: { mean: "6 s", cv: 0.3 },
    });
    expect(withMeanSeconds(limits("triangular", "2 s", "9 s", "4 s"), 10)).toEqual({
      triangular: { min: "4 s", max: "18 s", mode: "8 s" },
    });
    expect(withMeanSeconds({ empirical: ["4 s", "6 s"] }, 2.5)).toEqual({ empirical: ["2 s", "3 s"] });
    expect(withMeanSeconds({ empirical: { csv: "a.csv", column: "b" } }, 5)).toEqual({
      empirical: { csv: "a.csv", column: "b" },
    });
  });

  it("varies more or less about the same mean, where its family says so by a coefficient", () => {
    expect([cvOf("4 s"), cvOf({ weibull: { mean: "4 s", cv: 0.2 } }), cvOf({ exponential: { mean: "4 s" } })]).toEqual([
      0,
      0.2,
      null,
    ]);
    expect(withCv("4 s", 0.2)).toEqual({ lognormal: { mean: "4 s", cv: 0.2 } });
    expect(withCv({ gamma: { mean: "4 s", cv: 0.2 } }, 0.7)).toEqual({ gamma: { mean: "4 s", cv: 0.7 } });
    expect(withCv({ gamma: { mean: "4 s", cv: 0.2 } }, 0)).toBe("4 s");
    expect(withCv({ exponential: { mean: "4 s" } }, 0.3)).toEqual({ exponential: { mean: "4 s", cv: 0.3 } });
  });
});
