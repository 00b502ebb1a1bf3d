import { uniformStream } from "../../../maths/random/index.ts";
import { formatP } from "../../../maths/statistics/index.ts";
import { formatNumber } from "../../../text/units/index.ts";
import type { Family, Fitted } from "../family.ts";
import { canBeFitted, type SimulationOptions } from "../goodnessOfFit.ts";
import { fitMixture, type Mixture } from "../mixture.ts";
import { resampler } from "../resample.ts";
import { type Sample, sumOf } from "../sample.ts";
import { simulatedSamples } from "../sampleSize.ts";
import { TailCount } from "../tailCount.ts";
import { type Check, found, notChecked } from "./check.ts";

/** Fewer times than this cannot show two humps. Our own rule. */
const LEAST = 20;
/** Means of two equal spreads must be further apart than this many of them for two humps (Behboodian 1970). */
const TWO_HUMPS = 2;
/** A smaller share is an outlier, not a population. Our own rule. */
const MIN_SHARE = 0.05;

/**
 * Whether two lognormal populations explain the times much better than the best single family does: the gain in
 * log-likelihood against that of samples simulated from the family (parametric bootstrap; McLachlan 1987, Applied
 * Statistics 36), and the two stand apart.
 */
export function mixtureCheck(
  sample: Sample,
  single: { family: Family; fitted: Fitted } | null,
  unit: string,
  options: SimulationOptions,
): Check {
  const name = "two populations";
  if (sample.open.length > 0)
    return notChecked(
      name,
      "Cannot be told while times are open. Watch them to their end, or look for a bend in the picture of observed against fitted times.",
    );
  if (sample.ended.length < LEAST || single === null) return notChecked(name, `Fewer than ${LEAST} times.`);
  const mixture = onLogarithms(sample);
  const p = standApart(mixture) ? gainP(sample, single, options) : 1;
  const figures = wordsOf(mixture, unit);
  return found(name, p, {
    told: `Two kinds of work seem to be mixed: ${figures} (${formatP(p)}). Separate them (machine and hand, two sizes, two people) and fit each.`,
    fine: "One kind of work explains the times well enough.",
  });
}

function onLogarithms({ ended }: Sample): Mixture {
  return fitMixture(ended.map(Math.log));
}

function standApart({ share, means, sd }: Mixture): boolean {
  return Math.min(share, 1 - share) >= MIN_SHARE && means[1] - means[0] > TWO_HUMPS * sd;
}

/** In log-likelihood of the times themselves: that of their logarithms less the sum of these. */
function gainOf(sample: Sample, fitted: Fitted): number {
  return onLogarithms(sample).logLikelihood - sumOf(sample.ended, Math.log) - fitted.logLikelihood;
}

function gainP(
  sample: Sample,
  { family, fitted }: { family: Family; fitted: Fitted },
  { seed, samples, resolution }: SimulationOptions,
): number {
  const count = new TailCount(gainOf(sample, fitted));
  const { draw } = resampler(sample, resolution);
  const most = simulatedSamples(samples, sample.ended.length);
  for (let drawn = 0; drawn < most && !count.settled; drawn++) {
    const again = draw(fitted.law, uniformStream(seed, drawn, family.name, "two populations"));
    const refitted = canBeFitted(again) ? family.fit(again) : "nothing varies";
    if (typeof refitted !== "string") count.add(gainOf(again, refitted));
  }
  return count.p;
}

function wordsOf({ share, means }: Mixture, unit: string): string {
  const [low, high] = means.map((mean) => `${formatNumber(Math.exp(mean))} ${unit}`);
  return `${(share * 100).toFixed(0)} % around ${low}, the others around ${high}`;
}
