import type { StudyResults } from "../../days/results/index.ts";
import {
  chanceAboveZero,
  quantile,
  varianceComponents,
  withoutLuck,
  worthOfKnowing,
} from "../../maths/statistics/index.ts";
import { formatDecimals, formatNumber } from "../../text/units/index.ts";
import { type Appraisal, appraise } from "./appraise.ts";
import { cashOfDay } from "./cashOfDay.ts";
import type { OptionsQuestion } from "./readOptions.ts";

/** How one offer fares for all that is not known. */
export interface OfferInWorlds {
  name: string;
  /** Mean of the net present value, and between what it lies in so many of 100 worlds as the confidence says. */
  presentValue: { mean: number; low: number; high: number };
  /** Years until it has paid its price, without interest, in as many worlds; Infinity (in files null) where it never does. */
  paybackYears: { low: number; high: number };
  /** Probability that it does not earn its price with interest in its life. */
  chanceOfLoss: number;
  /**
   * What choosing it gives away a year against knowing every figure first, nothing bought being a choice as well; null of one
   * that does harm, which is no choice.
   */
  regretPerYear: number | null;
}

/** What the offers are worth where figures are not known. */
export interface OffersInWorlds {
  worlds: number;
  days: number;
  uncertain: string[];
  options: OfferInWorlds[];
  /** What it is worth a year to know every figure before choosing. */
  worthOfKnowingPerYear: number;
  /** A sentence for each option. */
  words: string[];
}

/** How many worlds were simulated, how many days each, and which figures are one thing in each of them. */
export interface SimulatedWorlds {
  counts: { worlds: number; days: number };
  figures: readonly { name: string }[];
}

/**
 * Appraises each offer in each world: there the figures are one thing that they may be, and the offer's benefit is its mean over the
 * world's days, what luck adds to so few of them taken off. `results`: the variants of each world side by side, today's plan first.
 * `harms`: of each offer what it makes worse, or null; who does harm is not advised, whatever it earns.
 */
export function offersInWorlds(
  question: OptionsQuestion,
  { counts, figures }: SimulatedWorlds,
  { variants }: Pick<StudyResults, "variants">,
  harms: readonly (string | null)[],
): OffersInWorlds {
  const { offerCosts, interest, daysPerYear, currency, study } = question;
  const count = offerCosts.length + 1;
  const cash = (world: number, variant: number) => cashOfDay(variants[world * count + variant]!.values);
  const worlds = Array.from({ length: counts.worlds }, (_, world) => world);
  const found = offerCosts.map((cost, option) => {
    const gains = worlds.map((world) => {
      const base = cash(world, 0);
      return cash(world, option + 1).map((value, day) => value - base[day]!);
    });
    const { within } = varianceComponents(gains, study.confidence);
    const means = gains.map((days) => days.reduce((sum, value) => sum + value, 0) / days.length);
    const of = (perDay: number): Appraisal => appraise(cost, perDay * daysPerYear, interest);
    // The present value is a straight line in the benefit, so that luck goes through it as it is.
    const slope = of(1).presentValue - of(0).presentValue;
    const noise = (slope * slope * within) / counts.days;
    const perWorld = withoutLuck(means, within / counts.days).map(of);
    const gain = chanceAboveZero(
      means.map((mean) => of(mean).presentValue),
      noise,
    );
    return { perWorld, chanceOfLoss: 1 - gain };
  });
  const sound = found.filter((_, option) => harms[option] === null);
  const yearly = sound.map(({ perWorld }) => perWorld.map(({ perYear }) => perYear));
  const chosen = worthOfKnowing([worlds.map(() => 0), ...yearly]);
  const options = found.map((each, option): OfferInWorlds => {
    const { perWorld, chanceOfLoss } = each;
    const ends = (values: number[]) => {
      const sorted = values.toSorted((a, b) => a - b);
      const end = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
      return { low: end((1 - study.confidence) / 2), high: end((1 + study.confidence) / 2) };
    };
    const values = perWorld.map(({ presentValue }) => presentValue);
    const [low, high] = [(1 - study.confidence) / 2, (1 + study.confidence) / 2];
    const sorted = values.toSorted((a, b) => a - b);
    return {
      name: study.variants[option + 1]!.name,
      presentValue: {
        mean: values.reduce((sum, value) => sum + value, 0) / values.length,
        low: quantile(sorted, low)!,
        high: quantile(sorted, high)!,
      },
      paybackYears: ends(perWorld.map(({ paybackYears }) => paybackYears)),
      chanceOfLoss,
      regretPerYear: sound.includes(each) ? chosen.regrets[sound.indexOf(each) + 1]! : null,
    };
  });
  const of100 = Math.round(100 * study.confidence);
  return {
    ...counts,
    uncertain: figures.map(({ name }) => name),
    options,
    worthOfKnowingPerYear: chosen.value,
    words: [
      ...options.flatMap((option, index) =>
        harms[index] === null ? [offerWords(option, offerCosts[index]!.lifeYears, of100)] : [],
      ),
      knowingWords(chosen.value, currency),
    ],
  };
}

/** "machine" pays back in 2.1 to 6 years in 95 of 100 worlds; in 8 of 100 it does not earn its price with interest in 10 years. */
function offerWords({ name, paybackYears, chanceOfLoss }: OfferInWorlds, lifeYears: number, of100: number): string {
  const { low, high } = paybackYears;
  const years = (value: number) => formatNumber(value, 2);
  const often = `in ${of100} of 100 worlds`;
  const payback =
    high === 0
      ? `pays back at once ${often}`
      : low === Number.POSITIVE_INFINITY
        ? `never pays back ${often}`
        : high === Number.POSITIVE_INFINITY
          ? `pays back in ${years(low)} years at best and never at worst, ${often}`
          : `pays back in ${years(low)} to ${years(high)} years ${often}`;
  const loss = Math.round(100 * chanceOfLoss);
  const earns = `its price with interest in its ${formatNumber(lifeYears)} years`;
  if (loss === 0) return `"${name}" ${payback}; it earns ${earns} in nearly every world.`;
  if (loss === 100) return `"${name}" ${payback}; it earns ${earns} in hardly any world.`;
  return `"${name}" ${payback}; in ${loss} of 100 it does not earn ${earns}.`;
}

function knowingWords(worth: number, currency: string): string {
  return worth <= 0
    ? "The same choice is best in every world that was drawn: no figure has to be known first."
    : `To know every uncertain figure before choosing is worth ${formatDecimals(worth, 0)} ${currency} a year on average.`;
}
