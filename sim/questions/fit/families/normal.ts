import { QuantileTable } from "../../../maths/random/index.ts";
import type { Family } from "../family.ts";
import type { Law } from "../law.ts";
import { fittedOf } from "./fittedOf.ts";
import { normalMoments } from "./normalMoments.ts";
import { logNormalAbove, logNormalDensity, normalBelow } from "./standardNormal.ts";

/** Cut so far below that nothing is lost to 53 bits. */
const UNCUT = new QuantileTable({ family: "normal", cut: -37 });

export function normalLaw(mean: number, sd: number): Law {
  return {
    logDensity: (x) => logNormalDensity((x - mean) / sd) - Math.log(sd),
    below: (x) => normalBelow((x - mean) / sd),
    logAbove: (x) => logNormalAbove((x - mean) / sd),
    quantile: (p) => mean + sd * UNCUT.at(p),
    mean,
    sd,
  };
}

/** The plain normal distribution, not cut at 0; a plan cuts it (see `normalCut`). */
export const normal: Family = {
  name: "normal",
  freedom: 2,
  takesOpen: true,
  fit(sample) {
    const { mean, sd } = normalMoments(sample);
    const law = normalLaw(mean, sd);
    return fittedOf("normal", { mean, sd }, law, { family: "normal", mean, sd }, sample);
  },
};
