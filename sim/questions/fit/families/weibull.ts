import { jStat, power, safeRoot } from "../../../maths/numeric/index.ts";
import type { Family } from "../family.ts";
import type { Law } from "../law.ts";
import { type Sample, sumOf } from "../sample.ts";
import { fittedOf } from "./fittedOf.ts";

/** Shapes beyond these are those of a sample without spread, or of one that no machine gives. */
const [LEAST, MOST] = [0.05, 1000];

export function weibullLaw(shape: number, scale: number): Law {
  const mean = scale * Math.exp(jStat.gammaln(1 + 1 / shape));
  const cv = Math.sqrt(Math.expm1(jStat.gammaln(1 + 2 / shape) - 2 * jStat.gammaln(1 + 1 / shape)));
  const hazard = (x: number) => (x <= 0 ? 0 : power(x / scale, shape));
  return {
    logDensity: (x) =>
      x <= 0 ? Number.NEGATIVE_INFINITY : Math.log(shape / scale) + (shape - 1) * Math.log(x / scale) - hazard(x),
    below: (x) => -Math.expm1(-hazard(x)),
    logAbove: (x) => -hazard(x),
    quantile: (p) => scale * power(-Math.log1p(-p), 1 / shape),
    mean,
    sd: mean * cv,
  };
}

/**
 * Shape k is the root of (sum of x^k ln x) / (sum of x^k) - 1/k - mean of ln x, sums over all times, the last mean over
 * ended ones; scale = (sum of x^k / ended)^(1/k) (Cohen 1965, Technometrics 7). The left side rises in k.
 */
export const weibull: Family = {
  name: "weibull",
  freedom: 2,
  takesOpen: true,
  fit(sample) {
    const { shape, scale } = shapeAndScale(sample);
    if (!(shape > LEAST * 1.001 && shape < MOST * 0.999)) return `its shape would lie outside ${LEAST} to ${MOST}`;
    const law = weibullLaw(shape, scale);
    return fittedOf(
      "weibull",
      { shape, scale },
      law,
      { family: "weibull", mean: law.mean, cv: law.sd / law.mean },
      sample,
    );
  },
};

function shapeAndScale({ ended, open }: Sample): { shape: number; scale: number } {
  // Times are taken relative to the longest, so that no power overflows.
  const longest = Math.max(ended.at(-1)!, open.at(-1) ?? 0);
  const relative = (x: number) => Math.log(x / longest);
  const logs = [...ended, ...open].map(relative);
  const meanLog = sumOf(ended, relative) / ended.length;
  const powers = (k: number): [zero: number, one: number, two: number] => {
    const sums: [number, number, number] = [0, 0, 0];
    for (const log of logs) {
      const power = Math.exp(k * log);
      sums[0] += power;
      sums[1] += power * log;
      sums[2] += power * log * log;
    }
    return sums;
  };
  const shape = safeRoot(
    (k) => {
      const [zero, one, two] = powers(k);
      return [one / zero - 1 / k - meanLog, two / zero - (one / zero) ** 2 + 1 / (k * k)];
    },
    LEAST,
    MOST,
  );
  return { shape, scale: longest * power(powers(shape)[0] / ended.length, 1 / shape) };
}
