import type { Family } from "../family.ts";
import type { Law } from "../law.ts";
import { fittedOf } from "./fittedOf.ts";
import { normalMoments } from "./normalMoments.ts";
import { quantileOf } from "./quantileOf.ts";
import { logNormalAbove, logNormalDensity, normalBelow } from "./standardNormal.ts";

/** `mu` and `sigma` are mean and standard deviation of the logarithms. */
export function lognormalLaw(mu: number, sigma: number): Law {
  const mean = Math.exp(mu + (sigma * sigma) / 2);
  const cv = Math.sqrt(Math.expm1(sigma * sigma));
  const z = (x: number) => (Math.log(x) - mu) / sigma;
  return {
    logDensity: (x) => (x <= 0 ? Number.NEGATIVE_INFINITY : logNormalDensity(z(x)) - Math.log(sigma * x)),
    below: (x) => (x <= 0 ? 0 : normalBelow(z(x))),
    logAbove: (x) => (x <= 0 ? 0 : logNormalAbove(z(x))),
    quantile: quantileOf({ family: "lognormal", mean, cv }),
    mean,
    sd: mean * cv,
  };
}

/** Mean and spread of the logarithms (Johnson, Kotz and Balakrishnan 1994, ch. 14); see `normalMoments` for open times. */
export const lognormal: Family = {
  name: "lognormal",
  freedom: 2,
  takesOpen: true,
  fit(sample) {
    const logs = { ended: sample.ended.map(Math.log), open: sample.open.map(Math.log) };
    const { mean: mu, sd: sigma } = normalMoments(logs);
    const law = lognormalLaw(mu, sigma);
    return fittedOf(
      "lognormal",
      { mu, sigma },
      law,
      { family: "lognormal", mean: law.mean, cv: law.sd / law.mean },
      sample,
    );
  },
};
