import { standardNormalBelow } from "../random/index.ts";
import { compensatedSum } from "./compensatedSum.ts";
import { normalQuantile } from "./normalQuantile.ts";

/** A choice between options of which each is better in some worlds. */
export interface WorthOfKnowing {
  /** The option with the greatest mean; the first of several. */
  best: number;
  means: number[];
  /** Of each option: how much better, on average, the best of each world is. */
  regrets: number[];
  /** What it is worth to know the world before choosing: the regret of the best. Never below 0. */
  value: number;
}

/**
 * The value of perfect information, E[max] - max E (Raiffa and Schlaifer 1961). `benefits[option][world]`: what an option
 * brings in a world that is as likely as the others; more is better. With what one figure alone is known to do in place of
 * all that happens in a world it is the value of knowing that figure (Strong and Oakley 2013, Medical Decision Making 33).
 *
 * @example worthOfKnowing([[0, 0], [2, -1]]) // best 1, value 0.5
 */
export function worthOfKnowing(benefits: readonly (readonly number[])[]): WorthOfKnowing {
  const worlds = benefits[0]!.length;
  const means = benefits.map(meanOf);
  const best = means.indexOf(Math.max(...means));
  const ofBest = Array.from({ length: worlds }, (_, world) => Math.max(...benefits.map((values) => values[world]!)));
  // The mean of differences, so that equal options come out at 0 and not at what rounding leaves.
  const regrets = benefits.map((values) => meanOf(ofBest.map((most, world) => most - values[world]!)));
  return { best, means, regrets, value: regrets[best]! };
}

/**
 * Means over few days, one for each world, pulled together until they vary by what the worlds truly differ by: by chance
 * they lie further apart (Louis 1984, Journal of the American Statistical Association 79; from memory). `noise`: the variance
 * that the luck of the days gives each.
 */
export function withoutLuck(means: readonly number[], noise: number): number[] {
  const { mean, between, all } = spreadOf(means, noise);
  const pull = all > 0 ? Math.sqrt(between / all) : 0;
  return means.map((value) => mean + pull * (value - mean));
}

/**
 * Probability that a quantity is above 0, from its mean over few days in each of several worlds: what it is in a world is
 * normal about the mean that is pulled to that of all worlds (normal with normal errors; James and Stein 1961), and what
 * so many worlds and days leave open of the mean of all counts as not known, too. 0.5 where it is 0 everywhere.
 */
export function chanceAboveZero(means: readonly number[], noise: number): number {
  const { middles, sd } = inWorlds({ means, noise });
  return meanOf(middles.map((middle) => aboveZero(middle, sd)));
}

/** By how much an option is better than a certain other one, in each world over few days; `noise` as above. */
export interface Lead {
  means: readonly number[];
  noise: number;
}

/** Points at which a lead above 0 is looked at, each for as much of it. */
const POINTS = 9;
/** A lead that is above 0 less often than this is none. */
const NEGLIGIBLE = 1e-9;

/**
 * Probability that each option is the best of all, from what it leads a certain one of them by: null is that one. Given the
 * world leads are taken as independent. With two options it is `chanceAboveZero` and the rest. The sum is 1.
 */
export function chancesToBeBest(leads: readonly (Lead | null)[]): number[] {
  const rivals = leads.map((lead) => lead && inWorlds(lead));
  const worlds = leads.find((lead) => lead !== null)?.means.length ?? 0;
  if (worlds === 0) return leads.map(() => 1);
  const byWorld = Array.from({ length: worlds }, (_, world) => bestIn(rivals, world));
  return leads.map((_, option) => meanOf(byWorld.map((chances) => chances[option]!)));
}

type Rival = ReturnType<typeof inWorlds>;

/** The one that all are compared with is best where no lead is above 0; what is left is shared out among the others. */
function bestIn(rivals: readonly (Rival | null)[], world: number): number[] {
  const above = rivals.map((rival) => (rival === null ? 0 : aboveZero(rival.middles[world]!, rival.sd)));
  const none = product(above.map((chance) => 1 - chance));
  const contenders = rivals.filter((rival, option) => rival !== null && above[option]! > NEGLIGIBLE) as Rival[];
  const weights = rivals.map((rival, option) =>
    rival !== null && above[option]! > NEGLIGIBLE
      ? above[option]! * ahead(rival, contenders, world, above[option]!)
      : 0,
  );
  const all = compensatedSum(weights);
  return rivals.map((rival, option) => (rival === null ? none : all > 0 ? ((1 - none) * weights[option]!) / all : 0));
}

/** How often a lead that is above 0, as it is in the part `above` of its normal, is above all others. */
function ahead(rival: Rival, contenders: readonly Rival[], world: number, above: number): number {
  const others = contenders.filter((other) => other !== rival);
  const chances = Array.from({ length: POINTS }, (_, point) => {
    const lead = rival.middles[world]! - rival.sd * normalQuantile((above * (point + 0.5)) / POINTS);
    return product(others.map(({ middles, sd }) => aboveZero(lead - middles[world]!, sd)));
  });
  return meanOf(chances);
}

/** What a quantity is in each world: normal about a middle. */
function inWorlds({ means, noise }: Lead): { middles: number[]; sd: number } {
  const { mean, between, all } = spreadOf(means, noise);
  const kept = all > 0 ? between / all : 0;
  const ofMean = (between + noise) / means.length;
  const sd = Math.sqrt(kept * noise + (1 - kept) ** 2 * ofMean);
  return { middles: means.map((value) => mean + kept * (value - mean)), sd };
}

function product(values: readonly number[]): number {
  return values.reduce((all, value) => all * value, 1);
}

function aboveZero(mean: number, sd: number): number {
  if (sd > 0) return standardNormalBelow(mean / sd);
  return mean === 0 ? 0.5 : mean > 0 ? 1 : 0;
}

function spreadOf(means: readonly number[], noise: number) {
  const mean = meanOf(means);
  const all = compensatedSum(means.map((value) => (value - mean) ** 2)) / (means.length - 1);
  return { mean, all, between: Math.max(0, all - noise) };
}

function meanOf(values: readonly number[]): number {
  return compensatedSum(values) / values.length;
}
