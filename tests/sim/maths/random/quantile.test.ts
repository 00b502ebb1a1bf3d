import { describe, expect, it } from "vitest";
import { pertBeta, unitQuantile, weibullShape } from "../../../../sim/maths/random/index.ts";
import { cephes } from "../../../support/cephes.ts";
import { relativeError } from "../../../support/relativeError.ts";

// Quantiles recomputed with SciPy from the closed forms (the distributions are in any statistics text); digits are
// rounded, so half a unit of the last one is allowed.
const PROBABILITIES = [0.01, 0.05, 0.5, 0.95, 0.99];
const lower = (shape: Parameters<typeof unitQuantile>[0], u: number) =>
  u <= 0.5 ? unitQuantile(shape, u, false) : unitQuantile(shape, 1 - u, true);

const TABLE: { name: string; at: (u: number) => number; expected: number[] }[] = [
  {
    name: "lognormal, mean 5.5, cv 0.3",
    at: (u) => 5.5 * lower({ family: "lognormal", cv: 0.3 }, u),
    expected: [2.66109, 3.250456, 5.268045, 8.537968, 10.428921],
  },
  {
    name: "gamma, mean 5.5, cv 0.3",
    at: (u) => 5.5 * lower({ family: "gamma", cv: 0.3 }, u),
    expected: [2.397529, 3.094926, 5.335909, 8.465061, 10.045983],
  },
  {
    name: "Weibull, mean 5.5, cv 0.3",
    at: (u) => 5.5 * lower({ family: "weibull", cv: 0.3 }, u),
    expected: [1.765632, 2.738481, 5.520628, 8.18759, 9.192633],
  },
  {
    name: "PERT 2, 3, 7",
    at: (u) => 2 + 5 * lower({ family: "beta", ...pertBeta({ family: "pert", min: 2, mode: 3, max: 7 }) }, u),
    expected: [2.115673, 2.294887, 3.383361, 5.106384, 5.742797],
  },
  {
    name: "Erlang, k 3, mean 6",
    at: (u) => 6 * lower({ family: "gamma", cv: 1 / Math.sqrt(3) }, u),
    expected: [0.87209, 1.635383, 5.348121, 12.591587, 16.811894],
  },
  {
    name: "normal(5, 2) cut at 0",
    at: (u) => 5 + 2 * lower({ family: "normal", cut: -2.5 }, u),
    expected: [0.718523, 1.819677, 5.015565, 8.295743, 9.657368],
  },
  {
    name: "normal(2, 2) cut at 0",
    at: (u) => 2 + 2 * lower({ family: "normal", cut: -1 }, u),
    expected: [0.068373, 0.321913, 2.400347, 5.45437, 6.780937],
  },
];

describe("unitQuantile", () => {
  for (const { name, at, expected } of TABLE) {
    it(`agrees with SciPy's quantiles of ${name}`, () => {
      PROBABILITIES.forEach((u, index) => {
        expect(Math.abs(at(u) - expected[index]!), `at ${u}`).toBeLessThanOrEqual(0.51e-6);
      });
    });
  }

  it("inverts the Cephes gamma integral within 1e-8 for shapes from 0.25 to 400 and tails down to 1e-9", () => {
    for (const shape of [0.25, 1, 4, 11.1, 100, 400]) {
      for (let exponent = -30; exponent < 0; exponent++) {
        const tail = 2 ** exponent;
        const low = shape * unitQuantile({ family: "gamma", cv: 1 / Math.sqrt(shape) }, tail, false);
        expect(relativeError(cephes.igam(shape, low), tail), `shape ${shape}, tail 2^${exponent}`).toBeLessThan(1e-7);
        const high = shape * unitQuantile({ family: "gamma", cv: 1 / Math.sqrt(shape) }, tail, true);
        expect(relativeError(cephes.igamc(shape, high), tail), `shape ${shape}, upper 2^${exponent}`).toBeLessThan(
          1e-6,
        );
      }
    }
  });

  it("inverts the exponential exactly in both tails", () => {
    expect(unitQuantile({ family: "exponential" }, 0.25, true)).toBe(Math.log(4));
    expect(relativeError(unitQuantile({ family: "exponential" }, 1e-12, false), 1e-12)).toBeLessThan(1e-11);
  });
});

describe("weibullShape", () => {
  it("is 1 for the exponential's coefficient of variation", () => {
    expect(relativeError(weibullShape(1), 1)).toBeLessThan(1e-9);
  });

  it("agrees with the root found by SciPy for a cv of 0.3", () => {
    expect(Math.abs(weibullShape(0.3) - 3.7137724)).toBeLessThan(1e-7);
  });

  it("gives back the coefficient of variation through Cephes' gamma function", () => {
    for (const cv of [0.05, 0.2, 0.7, 1.5, 3]) {
      const k = weibullShape(cv);
      const ratio = cephes.gamma(1 + 2 / k) / cephes.gamma(1 + 1 / k) ** 2;
      expect(relativeError(Math.sqrt(ratio - 1), cv), `cv ${cv}`).toBeLessThan(1e-8);
    }
  });
});
