import { describe, expect, it } from "vitest";
import { estimate, pairedTest } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../../../support/workedSample.ts";

describe("pairedTest", () => {
  it("gives t and p of the worked sample (SciPy)", () => {
    const differences = VARIANT_SAMPLE.map((value, index) => value - BASE_SAMPLE[index]!);
    const found = pairedTest(estimate(differences, 0.95)!)!;
    expect(found.t).toBeCloseTo(8.089126, 6);
    expect(found.df).toBe(9);
    expect(found.p).toBeCloseTo(2.02576e-5, 9);
  });

  it("tells no spread from no difference, and not enough data from both", () => {
    expect(pairedTest({ n: 5, mean: 0, sd: 0 })).toEqual({ t: 0, df: 4, p: 1 });
    expect(pairedTest({ n: 5, mean: -2, sd: 0 })).toEqual({ t: Number.NEGATIVE_INFINITY, df: 4, p: 0 });
    expect(pairedTest({ n: 1, mean: 3, sd: 0 })).toBeNull();
  });
});
