import { formatP, normalQuantile } from "../../../maths/statistics/index.ts";
import { formatNumber } from "../../../text/units/index.ts";
import { normalBelow } from "../families/standardNormal.ts";
import { censoredTrend, type OrderedTime } from "./censoredTrend.ts";
import { type Check, found, notChecked } from "./check.ts";

const LEAST = 10;
const CONFIDENCE = 0.95;
/** More times than this are put together, neighbours with neighbours, before the size of a drift is taken. */
const MAX_PLACES = 1000;

/**
 * Two-sided p-value of a trend in the order of the values (Mann 1945, Econometrica 13; Kendall 1975, with his correction
 * for ties and for continuity); the sign tells which way. Wants 10 values. Cost n squared.
 */
export function mannKendall(values: readonly number[]): { s: number; p: number } {
  const n = values.length;
  let s = 0;
  for (let i = 0; i < n; i++) for (let j = i + 1; j < n; j++) s += Math.sign(values[j]! - values[i]!);
  const variance = varianceOfS(values);
  if (variance === 0 || s === 0) return { s, p: 1 };
  return { s, p: Math.min(1, 2 * normalBelow(-(Math.abs(s) - 1) / Math.sqrt(variance))) };
}

function varianceOfS(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const term = (t: number) => t * (t - 1) * (2 * t + 5);
  const ties = [...counts.values()].reduce((sum, t) => sum + term(t), 0);
  return (term(values.length) - ties) / 18;
}

/**
 * How many times as long the last value is as the first, by the median of the slopes of all pairs of logarithms, with its
 * interval (Theil 1950; Sen 1968, Journal of the American Statistical Association 63), whose ranks come from Kendall's
 * variance as the p-value of `mannKendall` does. Values above 0.
 */
export function sizeOfDrift(values: readonly number[], confidence = CONFIDENCE) {
  const logs = byPlaces(values.map(Math.log));
  const slopes = logs.flatMap((a, i) => logs.slice(i + 1).map((b, k) => (b - a) / (k + 1))).sort((a, b) => a - b);
  const reach = normalQuantile((1 + confidence) / 2) * Math.sqrt(varianceOfS(logs));
  const at = (rank: number) => slopes[Math.min(slopes.length - 1, Math.max(0, Math.round(rank)))]!;
  const whole = (slope: number) => Math.exp(slope * (logs.length - 1));
  const middle = (slopes.length - 1) / 2;
  return { times: whole(at(middle)), low: whole(at(middle - reach / 2)), high: whole(at(middle + reach / 2)) };
}

/** Means of neighbours, where there are many. */
function byPlaces(values: readonly number[]): number[] {
  const each = Math.ceil(values.length / MAX_PLACES);
  const groups = Math.floor(values.length / each);
  return Array.from({ length: groups }, (_, group) => {
    const some = values.slice(group * each, (group + 1) * each);
    return some.reduce((sum, value) => sum + value, 0) / each;
  });
}

/** Whether times grow longer or shorter as the study goes on. `ordered`: as they were taken, open ones included. */
export function driftCheck(ordered: readonly OrderedTime[], unit: string): Check {
  const ended = ordered.filter(({ open }) => !open).map(({ value }) => value);
  if (ended.length < LEAST) return notChecked("drift", `Fewer than ${LEAST} times that ended.`);
  if (new Set(ended).size === 1) return notChecked("drift", "Nothing varies.");
  return ended.length < ordered.length ? driftOfOpen(ordered) : driftOfEnded(ended, unit);
}

function driftOfEnded(ended: readonly number[], unit: string): Check {
  const { p } = mannKendall(ended);
  const { times, low, high } = sizeOfDrift(ended);
  const half = Math.floor(ended.length / 2);
  const means = `mean ${meanText(ended.slice(0, half), unit)} in the first half, ${meanText(ended.slice(-half), unit)} in the second`;
  return found("drift", p, {
    told: `Times grew about ${changeWords(times)} from the first to the last (${rangeWords(low, high)} at 95 %; ${formatP(p)}); ${means}. Did people tire or learn, or did the product change?`,
    fine: `No drift shown from first to last (${rangeWords(low, high)} at 95 %; ${formatP(p)}).`,
  });
}

/** Means of halves would mislead here: what is still open has no length yet. */
function driftOfOpen(ordered: readonly OrderedTime[]): Check {
  const { p, ratio, low, high } = censoredTrend(ordered, CONFIDENCE);
  const way = ratio > 1 ? "shorter" : "longer";
  if (ratio === 0 || !Number.isFinite(ratio)) {
    return found("drift", p, {
      told: `Times grew ${way} almost without exception (${formatP(p)}; open times counted). What changed?`,
      fine: `No drift shown (${formatP(p)}; open times counted).`,
    });
  }
  const isShorter = ratio > 1;
  const [often, least, most] = isShorter ? [ratio, low, high] : [1 / ratio, 1 / high, 1 / low];
  const [at, than] = isShorter ? ["end of the file", "start"] : ["start of the file", "end"];
  const times = `at the ${at} a time under way is ${formatNumber(often, 2)} times as likely to end as at the ${than} (${ratioRange(least, most)} at 95 %; ${formatP(p)}; open times counted)`;
  return found("drift", p, {
    told: `Times grew ${way}: ${times}. What changed?`,
    fine: `No drift shown: ${times}.`,
  });
}

/** "0.5 to 2.1"; an end that cannot be told is left out. */
function ratioRange(low: number, high: number): string {
  if (!Number.isFinite(high)) return `${formatNumber(low, 2)} or more`;
  return low === 0 ? `${formatNumber(high, 2)} or less` : `${formatNumber(low, 2)} to ${formatNumber(high, 2)}`;
}

/** "18 % longer" of 1.18 times as long. */
function changeWords(times: number): string {
  const percent = formatNumber(100 * Math.abs(times - 1), 2);
  return `${percent} % ${times > 1 ? "longer" : "shorter"}`;
}

function rangeWords(low: number, high: number): string {
  return `${changeWords(low)} to ${changeWords(high)}`;
}

function meanText(values: readonly number[], unit: string): string {
  return `${formatNumber(values.reduce((sum, value) => sum + value, 0) / values.length)} ${unit}`;
}
