import { describe, expect, it } from "vitest";
import type { Varying } from "../../../../../sim/maths/random/index.ts";
import { FAMILIES } from "../../../../../sim/questions/fit/families/index.ts";
import { lawOf } from "../../../../../sim/questions/fit/families/lawOf.ts";
import type { FamilyName, Fitted } from "../../../../../sim/questions/fit/family.ts";
import { logLikelihood } from "../../../../../sim/questions/fit/law.ts";
import { type Sample, sampleOf } from "../../../../../sim/questions/fit/sample.ts";
import { textbook } from "../../../../oracle/distributionFunctions.ts";
import { cephes } from "../../../../support/cephes.ts";
import { CYCLES, drawnTimes, UPTIMES } from "../../../../support/timeStudies.ts";

type Case = [family: FamilyName, parameters: Record<string, number>];
const LAWS: [...Case, varying: Varying][] = [
  ["exponential", { mean: 5.5 }, { family: "exponential", mean: 5.5 }],
  [
    "lognormal",
    { mu: Math.log(5.5) - 0.02, sigma: 0.2 },
    { family: "lognormal", mean: 5.5, cv: Math.sqrt(Math.expm1(0.04)) },
  ],
  ["gamma", { shape: 4, scale: 1.5 }, { family: "gamma", mean: 6, cv: 0.5 }],
  ["weibull", { shape: 1, scale: 3 }, { family: "weibull", mean: 3, cv: 1 }],
  ["erlang", { mean: 6, k: 3 }, { family: "erlang", mean: 6, k: 3 }],
  ["triangular", { min: 3, mode: 5, max: 10 }, { family: "triangular", min: 3, mode: 5, max: 10 }],
  ["pert", { min: 2, mode: 3, max: 7 }, { family: "pert", min: 2, mode: 3, max: 7 }],
];
const PROBABILITIES = [0.001, 0.05, 0.3, 0.5, 0.8, 0.99];

describe("the law of a family", () => {
  it.each(LAWS)(
    "%s has the textbook's distribution function, mean and spread (Cephes)",
    (family, parameters, varying) => {
      const law = lawOf(family, parameters);
      const { cdf, mean, variance } = textbook(varying);
      for (const p of PROBABILITIES) {
        const x = law.quantile(p);
        expect(law.below(x)).toBeCloseTo(cdf(x), 8);
        expect(cdf(x)).toBeCloseTo(p, 6);
        expect(Math.exp(law.logAbove(x))).toBeCloseTo(1 - cdf(x), 8);
      }
      expect(law.mean).toBeCloseTo(mean, 9);
      expect(law.sd ** 2).toBeCloseTo(variance, 8);
    },
  );

  it("of the plain normal is not cut at 0", () => {
    const law = lawOf("normal", { mean: 2, sd: 2 });
    expect(law.below(0)).toBeCloseTo(cephes.ndtr(-1), 12);
    for (const p of PROBABILITIES) expect(law.quantile(p)).toBeCloseTo(2 + 2 * cephes.ndtri(p), 6);
    expect(law.logAbove(2 + 2 * 12)).toBeCloseTo(Math.log(cephes.ndtr(-12)), 9);
  });

  it.each<Case>([...LAWS.map(([family, parameters]): Case => [family, parameters]), ["normal", { mean: 5, sd: 2 }]])(
    "%s has a density that adds up to its distribution function",
    (family, parameters) => {
      const law = lawOf(family, parameters);
      const [from, to] = [law.quantile(0.05), law.quantile(0.9)];
      const steps = 20_000;
      const width = (to - from) / steps;
      let sum = 0;
      for (let i = 0; i < steps; i++) sum += Math.exp(law.logDensity(from + (i + 0.5) * width)) * width;
      expect(sum).toBeCloseTo(law.below(to) - law.below(from), 6);
    },
  );

  it.each(LAWS)("%s has no density and nothing below 0", (family, parameters) => {
    const law = lawOf(family, parameters);
    expect([law.logDensity(-1), law.below(-1), law.below(0), law.logAbove(-1)].map((x) => x + 0)).toEqual([
      Number.NEGATIVE_INFINITY,
      0,
      0,
      0,
    ]);
  });
});

const SAMPLES: [string, Sample][] = [
  ["cycle times", sampleOf(CYCLES)],
  ["open up-times", sampleOf(UPTIMES.ended, UPTIMES.open)],
  ["a long tail", sampleOf(drawnTimes({ family: "lognormal", mean: 20, cv: 1.4 }, 80, "families"))],
  ["times near 0", sampleOf(drawnTimes({ family: "gamma", mean: 3, cv: 1.2 }, 80, "families"))],
];
const CASES = FAMILIES.flatMap((family) =>
  SAMPLES.filter(([, sample]) => family.takesOpen || sample.open.length === 0).map(
    ([what, sample]) => [family.name, what, family, sample] as const,
  ),
);

describe("the fit of a family", () => {
  it.each(CASES)("%s to %s is likelier than its neighbours", (name, _, family, sample) => {
    const { parameters, logLikelihood: best, law } = family.fit(sample) as Fitted;
    expect(logLikelihood(law, sample)).toBeCloseTo(best, 9);
    for (const [parameter, value] of Object.entries(parameters)) {
      const steps = parameter === "k" ? [value - 1, value + 1] : [value * 0.99, value * 1.01];
      for (const other of steps.filter((step) => step > 0)) {
        const neighbour = logLikelihood(lawOf(name, { ...parameters, [parameter]: other }), sample);
        expect(Number.isNaN(neighbour) ? Number.NEGATIVE_INFINITY : neighbour).toBeLessThanOrEqual(best + 1e-7);
      }
    }
  });

  it.each(CASES)("%s to %s says the same in other units", (_, __, family, { ended, open }) => {
    const minutes = (values: Float64Array) => [...values].map((value) => value / 60);
    const plain = family.fit({ ended, open }) as Fitted;
    const other = family.fit(sampleOf(minutes(ended), minutes(open))) as Fitted;
    expect((other.law.mean * 60) / plain.law.mean).toBeCloseTo(1, 3);
    expect(other.logLikelihood - ended.length * Math.log(60)).toBeCloseTo(plain.logLikelihood, 4);
  });

  it.each(CASES)("%s to %s is what a plan would draw", (name, _, family, sample) => {
    const { varying, law } = family.fit(sample) as Fitted;
    if (name === "normal") return expect(varying).toEqual({ family: "normal", mean: law.mean, sd: law.sd });
    const { cdf, mean } = textbook(varying);
    expect(mean).toBeCloseTo(law.mean, 6);
    for (const p of PROBABILITIES) expect(cdf(law.quantile(p))).toBeCloseTo(p, 5);
  });

  it("of an Erlang distribution is refused where a plan could not hold its phases", () => {
    const narrow = sampleOf(drawnTimes({ family: "normal", mean: 100, sd: 2 }, 50, "families"));
    expect(FAMILIES.find(({ name }) => name === "erlang")!.fit(narrow)).toMatch(/more than 1000 phases/);
  });

  it("of gamma and Erlang is refused, at once, where hardly anything varies", () => {
    const still = sampleOf([5, 5, 5, 5, 5, 5, 5, 5, 5, 5.0001]);
    for (const family of FAMILIES.filter(({ name }) => name === "gamma" || name === "erlang")) {
      expect(family.fit(still)).toMatch(/vary by less than 1 %/);
    }
  });

  it("leaves a frozen sample as it was", () => {
    const sample = sampleOf(CYCLES);
    for (const family of FAMILIES) family.fit(sample);
    expect([...sample.ended]).toEqual([...CYCLES].sort((a, b) => a - b));
  });
});
