import { describe, expect, it } from "vitest";
import { uniformStream } from "../../../../../sim/maths/random/index.ts";
import { FAMILIES } from "../../../../../sim/questions/fit/families/index.ts";
import { lawOf } from "../../../../../sim/questions/fit/families/lawOf.ts";
import type { FamilyName, Fitted } from "../../../../../sim/questions/fit/family.ts";
import { logLikelihood } from "../../../../../sim/questions/fit/law.ts";
import { sampleOf } from "../../../../../sim/questions/fit/sample.ts";
import { cephes } from "../../../../support/cephes.ts";

/**
 * Known parameters come back at the rate they should: twice the likelihood that a fit gains over the truth is beyond the
 * 95 % point of chi-square (as many degrees of freedom as parameters; Wilks 1938) in 5 % of samples. 300 samples of 200
 * times: 4 to 30 of them, which fails by chance with probability 0.0003 per case (binomial, 15 expected).
 */
const SAMPLES = 300;
const TIMES = 200;
const [FEWEST, MOST] = [4, 30];

const REGULAR: [FamilyName, Record<string, number>][] = [
  ["exponential", { mean: 16 }],
  ["lognormal", { mu: 2.8, sigma: 0.28 }],
  ["gamma", { shape: 5, scale: 1.2 }],
  ["weibull", { shape: 1.6, scale: 20 }],
  ["normal", { mean: 12, sd: 2 }],
];

function countBeyond(name: FamilyName, parameters: Record<string, number>, watched: number): number {
  const family = FAMILIES.find((each) => each.name === name)!;
  const law = lawOf(name, parameters);
  let beyond = 0;
  for (let replication = 0; replication < SAMPLES; replication++) {
    const uniforms = uniformStream("recovery", replication, name, "times");
    const times = Array.from({ length: TIMES }, () => law.quantile(uniforms.next()));
    const open = times.filter((time) => time > watched).map(() => watched);
    const sample = sampleOf(
      times.filter((time) => time <= watched),
      open,
    );
    const gain = 2 * ((family.fit(sample) as Fitted).logLikelihood - logLikelihood(law, sample));
    if (cephes.chdtrc(family.freedom, gain) < 0.05) beyond++;
  }
  return beyond;
}

describe("known parameters", () => {
  it.each(REGULAR)("of %s come back within their likelihood region 95 times in 100", (name, parameters) => {
    const beyond = countBeyond(name, parameters, Number.POSITIVE_INFINITY);
    expect(beyond).toBeGreaterThanOrEqual(FEWEST);
    expect(beyond).toBeLessThanOrEqual(MOST);
  });

  it.each(REGULAR)("of %s do so when a third of the times is still open", (name, parameters) => {
    const beyond = countBeyond(name, parameters, lawOf(name, parameters).quantile(2 / 3));
    expect(beyond).toBeGreaterThanOrEqual(FEWEST);
    expect(beyond).toBeLessThanOrEqual(MOST);
  });

  it("of an Erlang distribution: 3 phases are found in most samples", () => {
    const erlang = FAMILIES.find(({ name }) => name === "erlang")!;
    const law = lawOf("erlang", { mean: 6, k: 3 });
    const found = Array.from({ length: 100 }, (_, replication) => {
      const uniforms = uniformStream("recovery", replication, "erlang", "times");
      const times = Array.from({ length: TIMES }, () => law.quantile(uniforms.next()));
      return (erlang.fit(sampleOf(times)) as Fitted).parameters.k;
    });
    // The shape's standard error is near 0.29 at 200 times, so 3 is nearest in about 90 of 100 samples; 75 are 5 sd away.
    expect(found.filter((k) => k === 3).length).toBeGreaterThanOrEqual(75);
  });

  /** Their likelihood is not regular, so there is no chi-square: four times the times, clearly nearer limits. */
  it.each([
    ["triangular", { min: 4, mode: 5, max: 9 }],
    ["pert", { min: 4, mode: 5, max: 9 }],
  ] as const)("of %s are met more closely by more times", (name, parameters) => {
    const family = FAMILIES.find((each) => each.name === name)!;
    const law = lawOf(name, parameters);
    const errors = [100, 1600].map((count) => {
      const squares = Array.from({ length: 30 }, (_, replication) => {
        const uniforms = uniformStream("recovery", replication, name, "limits");
        const times = Array.from({ length: count }, () => law.quantile(uniforms.next()));
        const found = (family.fit(sampleOf(times)) as Fitted).parameters;
        return Object.entries(parameters).reduce((sum, [key, value]) => sum + (found[key]! - value) ** 2, 0);
      });
      return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    });
    expect(errors[1]).toBeLessThan(0.5 * errors[0]!);
    expect(errors[1]).toBeLessThan(0.5);
  });
});
