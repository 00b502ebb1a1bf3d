import { describe, expect, it } from "vitest";
import { Sampler, squaredCvOf, uniformStream, type Varying } from "../../../../sim/maths/random/index.ts";

describe("squaredCvOf", () => {
  it.each<[string, Varying, number]>([
    ["a constant", { family: "constant", value: 4 }, 0],
    ["an exponential", { family: "exponential", mean: 4 }, 1],
    ["a lognormal", { family: "lognormal", mean: 5.5, cv: 0.3 }, 0.09],
    ["an Erlang", { family: "erlang", mean: 6, k: 3 }, 1 / 3],
    ["a uniform", { family: "uniform", min: 0, max: 2 }, 1 / 3],
    [
      "triangular 3, 5, 10: variance 2.166667, mean 6",
      { family: "triangular", min: 3, mode: 5, max: 10 },
      2.166667 / 36,
    ],
    ["PERT 2, 3, 7: variance 0.75, mean 3.5", { family: "pert", min: 2, mode: 3, max: 7 }, 0.75 / 3.5 ** 2],
    ["normal(5, 2) after the cut", { family: "normal", mean: 5, sd: 2 }, (1.95509 / 5.035276) ** 2],
    ["normal(2, 2) after the cut", { family: "normal", mean: 2, sd: 2 }, (1.587055 / 2.5752) ** 2],
    ["a normal that hardly varies", { family: "normal", mean: 2, sd: 0 }, 0],
    ["observed values, as a population", { family: "empirical", values: [1, 3] }, 0.25],
    ["nothing but zeros", { family: "constant", value: 0 }, 0],
  ])("knows that of %s", (_, varying, expected) => {
    expect(squaredCvOf(varying)).toBeCloseTo(expected, 6);
  });

  it("agrees with what is drawn: 200,000 draws of a Weibull and a gamma, seed fixed, within 2 %", () => {
    for (const family of ["weibull", "gamma"] as const) {
      const varying: Varying = { family, mean: 3, cv: 0.6 };
      const sampler = new Sampler(varying, uniformStream("squaredCvOf", 0, family, "draws"));
      let [sum, squares] = [0, 0];
      for (let draw = 0; draw < 200_000; draw++) {
        const value = sampler.draw();
        sum += value;
        squares += value * value;
      }
      const mean = sum / 200_000;
      const found = (squares / 200_000 - mean * mean) / mean ** 2;
      expect(Math.abs(found / squaredCvOf(varying) - 1)).toBeLessThan(0.02);
    }
  });
});
