import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adjustedP } from "../../../../sim/maths/statistics/index.ts";

describe("adjustedP", () => {
  it("gives the worked family of five (Holm 1979; Benjamini and Hochberg 1995; digits from SciPy)", () => {
    const found = adjustedP(Object.freeze([0.012, 0.041, 0.003, 0.2, 0.018]) as readonly number[]);
    const near = (values: number[], expected: number[]) =>
      values.forEach((value, index) => {
        expect(value).toBeCloseTo(expected[index]!, 12);
      });
    near(found.bonferroni, [0.06, 0.205, 0.015, 1, 0.09]);
    near(found.holm, [0.048, 0.082, 0.015, 0.2, 0.054]);
    near(found.benjaminiHochberg, [0.03, 0.05125, 0.015, 0.2, 0.03]);
  });

  it("keeps the order of evidence, and p <= Benjamini-Hochberg <= Holm <= Bonferroni <= 1", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 12 }), (p) => {
        const { bonferroni, holm, benjaminiHochberg } = adjustedP(p);
        p.forEach((value, index) => {
          const chain = [value, benjaminiHochberg[index]!, holm[index]!, bonferroni[index]!, 1];
          // Products round: one unit in the last place either way.
          for (let at = 1; at < chain.length; at++) expect(chain[at]! - chain[at - 1]!).toBeGreaterThan(-1e-15);
          p.forEach((other, place) => {
            if (value < other) expect(holm[index]!).toBeLessThanOrEqual(holm[place]!);
          });
        });
      }),
      { seed: 57, numRuns: 300 },
    );
  });

  it("leaves a single p-value as it is, an empty family empty, and refuses what is no probability", () => {
    expect(adjustedP([0.03])).toEqual({ bonferroni: [0.03], holm: [0.03], benjaminiHochberg: [0.03] });
    expect(adjustedP([])).toEqual({ bonferroni: [], holm: [], benjaminiHochberg: [] });
    for (const wrong of [-0.1, 1.1, Number.NaN]) expect(() => adjustedP([0.5, wrong])).toThrow(RangeError);
  });
});
