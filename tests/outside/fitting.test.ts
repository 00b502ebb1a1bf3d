import { describe, it } from "vitest";
import { meanOf, pertBeta, uniformStream } from "../../sim/maths/random/index.ts";
import { estimate, quantile } from "../../sim/maths/statistics/index.ts";
import { distances } from "../../sim/questions/fit/distances.ts";
import { exponential, exponentialLaw } from "../../sim/questions/fit/families/exponential.ts";
import { gamma, gammaLaw } from "../../sim/questions/fit/families/gamma.ts";
import { lognormal, lognormalLaw } from "../../sim/questions/fit/families/lognormal.ts";
import { normal, normalLaw } from "../../sim/questions/fit/families/normal.ts";
import { pertLaw } from "../../sim/questions/fit/families/pert.ts";
import { modeProducts, triangularLaw } from "../../sim/questions/fit/families/triangular.ts";
import { weibull, weibullLaw } from "../../sim/questions/fit/families/weibull.ts";
import type { Family, Fitted } from "../../sim/questions/fit/family.ts";
import type { Law } from "../../sim/questions/fit/law.ts";
import { type Sample, sampleOf } from "../../sim/questions/fit/sample.ts";
import { textbook } from "../oracle/distributionFunctions.ts";
import { momentsOf } from "../support/agreesWith.ts";
import { cephes } from "../support/cephes.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { CYCLES, UPTIMES } from "../support/timeStudies.ts";
import { FITTING } from "./register/fitting.ts";

const checks = new OutsideChecks(FITTING);
const REPLICATIONS = 20;
const LEVELS = [0.1, 0.05, 0.01];

/** A statistic of `count` samples of `n` values of a law, sorted; one list for each replication. */
function simulated(id: string, law: Law, n: number, count: number, of: (sample: Sample) => number): number[][] {
  return Array.from({ length: REPLICATIONS }, (_, replication) => {
    const uniforms = uniformStream(id, replication, "sample", "fitting");
    const draw = () => sampleOf(Array.from({ length: n }, () => law.quantile(uniforms.next())));
    return Array.from({ length: count }, () => of(draw())).sort((a, b) => a - b);
  });
}

/** With the uniform law known: the values beyond each printed point are as many as its level says. */
function known(id: string, n: number, count: number, of: (sample: Sample) => number, points: number[]): void {
  const uniform: Law = { ...triangularLaw(0, 0.5, 1), quantile: (p) => p };
  const samples = simulated(id, uniform, n, count, of);
  LEVELS.forEach((level, i) => {
    const beyond = samples.map((values) => values.filter((value) => value > points[i]!).length / count);
    // A share of 0.01 of some 100,000 samples has a standard error of 3 % of itself.
    checks.simulated(id, `${level} of them beyond ${points[i]}`, beyond, level, { relative: 0.04 });
  });
}

/** Uniform values against their own law. */
const AGAINST_UNIFORM: Law = { ...triangularLaw(0, 0.5, 1), below: (x) => Math.min(Math.max(x, 0), 1) };

describe("distances to a known law", () => {
  it.each([
    ["6.1", 5, [0.509449, 0.563275, 0.668531]],
    ["6.2", 10, [0.368662, 0.409246, 0.488932]],
    ["6.3", 20, [0.264731, 0.294075, 0.352411]],
    ["6.4", 50, [0.169592, 0.188406, 0.226037]],
  ])("%s Kolmogorov's D, law known (Kolmogorov 1933; Massey 1951; V-num)", (id, n, points) => {
    known(id, n, n > 20 ? 4000 : 6000, (sample) => distances(AGAINST_UNIFORM, sample).kolmogorov, points);
  });

  it(checks.title("6.6"), () => {
    known(
      "6.6",
      30,
      5000,
      (sample) => distances(AGAINST_UNIFORM, sample).andersonDarling,
      [1.932958, 2.492367, 3.878125],
    );
  });
});

/** Quantiles of a statistic of fitted samples of 20, no further from the figures than their own error and ours. */
function fitted(
  id: string,
  family: Family,
  law: Law,
  of: (fit: Fitted, sample: Sample) => number,
  points: number[],
): void {
  const count = 1500;
  const samples = simulated(id, law, 20, count, (sample) => of(family.fit(sample) as Fitted, sample));
  LEVELS.forEach((level, i) => {
    const { mean, standardError } = momentsOf(samples.map((values) => quantile(values, 1 - level)!));
    const allowed = 0.01 + cephes.stdtri(REPLICATIONS - 1, 0.9995) * standardError;
    checks.chance(id, `${level} point: found ${mean}, printed ${points[i]}`, Math.abs(mean - points[i]!), allowed);
  });
}

describe("distances to a fitted law", () => {
  const n = 20;
  const root = Math.sqrt(n);

  it(checks.title("6.7"), () => {
    const law = normalLaw(50, 10);
    const of = ({ parameters }: Fitted, sample: Sample) =>
      distances(normalLaw(parameters.mean!, parameters.sd! * Math.sqrt(n / (n - 1))), sample).andersonDarling *
      (1 + 0.75 / n + 2.25 / n ** 2);
    fitted("6.7", normal, law, of, [0.633, 0.752, 1.024]);
  });

  it(checks.title("6.8"), () => {
    const law = normalLaw(50, 10);
    const of = ({ parameters }: Fitted, sample: Sample) =>
      distances(normalLaw(parameters.mean!, parameters.sd! * Math.sqrt(n / (n - 1))), sample).kolmogorov *
      (root - 0.01 + 0.85 / root);
    fitted("6.8", normal, law, of, [0.821, 0.893, 1.037]);
  });

  it(checks.title("6.9"), () => {
    const of = (fit: Fitted, sample: Sample) => distances(fit.law, sample).andersonDarling * (1 + 0.6 / n);
    fitted("6.9", exponential, exponentialLaw(3), of, [1.075, 1.334, 1.986]);
  });

  it(checks.title("6.10"), () => {
    const of = (fit: Fitted, sample: Sample) =>
      (distances(fit.law, sample).kolmogorov - 0.2 / n) * (root + 0.26 + 0.5 / root);
    fitted("6.10", exponential, exponentialLaw(3), of, [0.985, 1.087, 1.296]);
  });

  it(checks.title("6.11"), () => {
    const of = (fit: Fitted, sample: Sample) => distances(fit.law, sample).andersonDarling * (1 + 0.2 / root);
    fitted("6.11", weibull, weibullLaw(1.5, 4), of, [0.651, 0.775, 1.056]);
  });
});

describe("twenty cycle times", () => {
  const sample = sampleOf(CYCLES);
  const likeliest = (family: Family) => family.fit(sample) as Fitted;
  const aic = (family: Family) => 2 * family.freedom - 2 * likeliest(family).logLikelihood;

  it(checks.title("6.s"), () => {
    const { mean, sd } = estimate(CYCLES, 0.95)!;
    checks.printed("6.s", "mean", mean, "7.16");
    checks.printed("6.s", "sd", sd, "1.861635");
    checks.printed("6.s", "cv", sd / mean, "0.260005");
    checks.printed("6.s", "median", quantile([...sample.ended], 0.5)!, "6.8");
  });

  it(checks.title("6.l"), () => {
    const { parameters, logLikelihood, law } = likeliest(lognormal);
    checks.printed("6.l", "mu", parameters.mu!, "1.9393366");
    checks.printed("6.l", "sigma", parameters.sigma!, "0.2369794");
    checks.printed("6.l", "mean", law.mean, "7.152173");
    checks.printed("6.l", "cv", law.sd / law.mean, "0.240346");
    checks.printed("6.l", "log-likelihood", logLikelihood, "-38.369862");
    checks.printed("6.l", "AIC", aic(lognormal), "80.739724");
    checks.printed("6.l", "D", distances(law, sample).kolmogorov, "0.115099");
    checks.printed("6.l", "A2", distances(law, sample).andersonDarling, "0.197239");
  });

  it(checks.title("6.g"), () => {
    const { parameters, logLikelihood, law } = likeliest(gamma);
    checks.printed("6.g", "shape", parameters.shape!, "17.303908");
    checks.printed("6.g", "scale", parameters.scale!, "0.4137794");
    checks.printed("6.g", "log-likelihood", logLikelihood, "-38.848770");
    checks.printed("6.g", "AIC", aic(gamma), "81.697540");
    checks.printed("6.g", "D", distances(law, sample).kolmogorov, "0.131918");
    checks.printed("6.g", "A2", distances(law, sample).andersonDarling, "0.289258");
  });

  it(checks.title("6.n"), () => {
    const { parameters, logLikelihood, law } = likeliest(normal);
    checks.printed("6.n", "mean", parameters.mean!, "7.16");
    checks.printed("6.n", "sd", parameters.sd!, "1.8144972");
    checks.printed("6.n", "log-likelihood", logLikelihood, "-40.294938");
    checks.printed("6.n", "AIC", aic(normal), "84.589877");
    checks.printed("6.n", "A2", distances(law, sample).andersonDarling, "0.544557");
    checks.printed("6.n", "A2 with n - 1", distances(normalLaw(7.16, 1.861635), sample).andersonDarling, "0.546579");
  });

  it(checks.title("6.w"), () => {
    const { parameters, logLikelihood, law } = likeliest(weibull);
    checks.printed("6.w", "shape", parameters.shape!, "3.9477415");
    checks.printed("6.w", "scale", parameters.scale!, "7.8715274");
    checks.printed("6.w", "log-likelihood", logLikelihood, "-41.107590");
    checks.printed("6.w", "AIC", aic(weibull), "86.215181");
    checks.printed("6.w", "D", distances(law, sample).kolmogorov, "0.164024");
    checks.printed("6.w", "A2", distances(law, sample).andersonDarling, "0.682814");
  });

  it(checks.title("6.e"), () => {
    const { parameters, logLikelihood, law } = likeliest(exponential);
    checks.printed("6.e", "mean", parameters.mean!, "7.16");
    checks.printed("6.e", "log-likelihood", logLikelihood, "-59.370200");
    checks.printed("6.e", "AIC", aic(exponential), "120.740399");
    checks.printed("6.e", "D", distances(law, sample).kolmogorov, "0.474002");
    checks.printed("6.e", "A2", distances(law, sample).andersonDarling, "5.453512");
    const expected = [lognormal, gamma, normal, weibull, exponential];
    const inOrder = expected.every((family, i) => i === 0 || aic(expected[i - 1]!) < aic(family));
    checks.exact("6.e", "ranking", Number(inOrder), 1, 0);
  });
});

describe("up-times of which three are still open", () => {
  const sample = sampleOf(UPTIMES.ended, UPTIMES.open);
  const likeliest = (family: Family) => family.fit(sample) as Fitted;

  it(checks.title("6.ce"), () => {
    checks.printed("6.ce", "mean", likeliest(exponential).parameters.mean!, "430.222222");
    checks.printed("6.ce", "log-likelihood", likeliest(exponential).logLikelihood, "-63.578717");
    const dropped = exponential.fit(sampleOf(UPTIMES.ended)) as Fitted;
    checks.printed("6.ce", "mean of the ended ones alone", dropped.parameters.mean!, "230.222222");
  });

  it(checks.title("6.cw"), () => {
    const { parameters, logLikelihood, law } = likeliest(weibull);
    checks.printed("6.cw", "shape", parameters.shape!, "1.1530322");
    checks.printed("6.cw", "scale", parameters.scale!, "427.986831");
    checks.printed("6.cw", "mean", law.mean, "407.004508");
    checks.printed("6.cw", "log-likelihood", logLikelihood, "-63.460673");
  });

  it(checks.title("6.cl"), () => {
    const { parameters, logLikelihood } = likeliest(lognormal);
    checks.printed("6.cl", "mu", parameters.mu!, "5.642193");
    checks.printed("6.cl", "sigma", parameters.sigma!, "1.070755");
    checks.printed("6.cl", "log-likelihood", logLikelihood, "-62.915518");
  });
});

describe("a triangular distribution between 0 and 1", () => {
  it(checks.title("6.t"), () => {
    const values = Float64Array.of(0.1, 0.25, 0.3, 0.4, 0.45, 0.6, 0.75, 0.8);
    const { best, logProducts } = modeProducts(values, 0, 1);
    checks.printed("6.t", "mode", values[best]!, "0.30");
    const figures = ["0.007244", "0.010383", "0.010908", "0.009946", "0.008795", "0.005425", "0.003641", "0.002897"];
    figures.forEach((figure, r) => {
      checks.printed("6.t", `product of ${values[r]}`, Math.exp(logProducts[r]!), figure);
    });
  });
});

describe("parameters behind mean and spread", () => {
  it(checks.title("6.q"), () => {
    const fromFigures: [string, Law][] = [
      ["lognormal", lognormalLaw(1.6616592, 0.2935604)],
      ["gamma", gammaLaw(11.111111, 0.495)],
      ["Weibull", weibullLaw(3.7137724, 6.0932513)],
    ];
    for (const [name, { mean, sd }] of fromFigures) {
      checks.exact("6.q", `${name} mean`, mean, 5.5, 2e-7);
      checks.exact("6.q", `${name} cv`, sd / mean, 0.3, 2e-7);
    }
    const { mean, sd } = triangularLaw(3, 5, 10);
    checks.printed("6.q", "triangular mean", mean, "6");
    checks.printed("6.q", "triangular variance", sd * sd, "2.166667");
    const pert = pertLaw(2, 3, 7);
    const { alpha, beta } = pertBeta({ family: "pert", min: 2, mode: 3, max: 7 });
    checks.printed("6.q", "PERT alpha", alpha, "1.8");
    checks.printed("6.q", "PERT beta", beta, "4.2");
    checks.printed("6.q", "PERT mean", pert.mean, "3.5");
    checks.printed("6.q", "PERT variance", pert.sd ** 2, "0.75");
    const cut: [number, string, string][] = [
      [5, "5.035276", "1.955090"],
      [2, "2.575200", "1.587055"],
    ];
    for (const [before, cutMean, cutSd] of cut) {
      checks.printed("6.q", "mean of a cut normal", meanOf({ family: "normal", mean: before, sd: 2 }), cutMean);
      const { variance } = textbook({ family: "normal", mean: before, sd: 2 });
      checks.printed("6.q", "sd of a cut normal", Math.sqrt(variance), cutSd);
    }
  });
});

checks.close();
