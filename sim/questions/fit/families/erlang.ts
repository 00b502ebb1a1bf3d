import { safeRoot } from "../../../maths/numeric/index.ts";
import type { Family, Fitted } from "../family.ts";
import { type Sample, sumOf } from "../sample.ts";
import { fittedOf } from "./fittedOf.ts";
import { gamma, gammaLaw } from "./gamma.ts";

/** As many phases as a plan may have. */
const MAX_PHASES = 1000;

/**
 * A gamma distribution with a whole shape k: the better of the two whole numbers next to the gamma fit's shape, as its
 * likelihood has one peak in the shape. The phases count as a parameter.
 */
export const erlang: Family = {
  name: "erlang",
  freedom: 2,
  takesOpen: true,
  fit(sample) {
    const free = gamma.fit(sample);
    if (typeof free === "string") return free;
    const shape = free.parameters.shape!;
    if (shape > MAX_PHASES) return `it would need more than ${MAX_PHASES} phases`;
    const below = Math.max(1, Math.floor(shape));
    const fits = [below, below + 1].map((k) => withPhases(k, sample));
    return fits[1]!.logLikelihood > fits[0]!.logLikelihood ? fits[1]! : fits[0]!;
  },
};

function withPhases(k: number, sample: Sample): Fitted {
  const mean = meanFor(k, sample);
  const law = gammaLaw(k, mean / k);
  return fittedOf("erlang", { mean, k }, law, { family: "erlang", mean, k }, sample);
}

/** The best mean for a given shape: the sample's, or with open times the root of the slope of the likelihood. */
function meanFor(k: number, sample: Sample): number {
  const { ended, open } = sample;
  const total = sumOf(ended);
  if (open.length === 0) return total / ended.length;
  // By x = ln(mean): each ended time gives k (x / mean - 1), each open one its hazard at c times c.
  const slope = (logMean: number): number => {
    const mean = Math.exp(logMean);
    const law = gammaLaw(k, mean / k);
    const hazardTimes = (c: number) => c * Math.exp(law.logDensity(c) - law.logAbove(c));
    return (k * total) / mean - k * ended.length + sumOf(open, hazardTimes);
  };
  const complete = Math.log(total / ended.length);
  const most = Math.log((total + sumOf(open)) / ended.length) + Math.LN2;
  return Math.exp(safeRoot((x) => [slope(x), Number.NaN], complete, most));
}
