import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Difference } from "../contract.ts";
import type { ResponseFormat } from "./responseFormat.ts";

/** A difference to today's plan (the base), told in the same words wherever it appears. */
export interface DifferenceWords {
  /** "+36.3 heads/h" */
  mean: string;
  /** "+35.0 to +37.5"; "" where there is no interval. */
  interval: string;
  /** "shown" or "not shown"; "one day, no interval" where n < 2. */
  verdict: string;
  /** "36.3 heads/h more than today's plan (35.0 to 37.5 at 95 %)" or "no difference from today's plan shown (...)". */
  sentence: string;
  /** The same without what is said once for all differences: "36.3 heads/h more than today's plan (35.0 to 37.5)". */
  brief: string;
}

export function differenceWords(
  difference: Difference | undefined,
  format: ResponseFormat,
  confidence: number,
): DifferenceWords {
  const { period } = format;
  if (!difference || difference.n === 0) {
    const sentence = `cannot be compared with today's plan: no simulated ${period} gave both values`;
    return { mean: "no value", interval: "", verdict: "not known", sentence, brief: sentence };
  }
  const { mean } = difference;
  const { low, high } = differenceEnds(difference);
  if (low === null || high === null) {
    const text = format.difference(mean, null);
    const sentence = `${format.comparison(mean, null)} than today's plan ${period === "day" ? "on" : "in"} one ${period}, which proves nothing about other ${period}s`;
    return { mean: text, interval: "", verdict: `one ${period}, no interval`, sentence, brief: sentence };
  }
  const resolution = differenceResolution(low, high);
  const interval = format.differenceRange(low, high, resolution);
  if (low === 0 && high === 0) {
    const sentence = `the same as today's plan ${period === "day" ? "on" : "in"} all ${difference.n} simulated ${period}s`;
    return { mean: "0", interval: "", verdict: "the same", sentence, brief: sentence };
  }
  const [least, most] = low > 0 ? [low, high] : [-high, -low];
  const sizes = format.sizeRange(least, most, resolution);
  const method = ` at ${formatConfidence(confidence)}${among(difference)}`;
  const told = (more: string) =>
    difference.shown
      ? `${format.comparison(mean, resolution)} than today's plan (${sizes}${more})`
      : `no difference from today's plan shown (less than ${format.bound(Math.max(-low, high), resolution)}${more})`;
  return {
    mean: format.difference(mean, resolution),
    interval,
    verdict: difference.shown ? "shown" : "not shown",
    sentence: told(method),
    brief: told(""),
  };
}

/** What the interval allows for besides the luck of the days. */
function among({ joint, comparisons }: Difference): string {
  return joint ? `, allowing for ${comparisons} changes compared` : "";
}

/** The interval that the verdict on a difference goes by: the one that allows for all comparisons where several were made. */
export function differenceEnds(difference: Difference): {
  halfWidth: number | null;
  low: number | null;
  high: number | null;
} {
  const { joint, familyLow, familyHigh, low, high, halfWidth } = difference;
  if (!joint || familyLow === null || familyHigh === null) return { halfWidth, low, high };
  return { halfWidth: (familyHigh - familyLow) / 2, low: familyLow, high: familyHigh };
}

/**
 * The half-width that sets the digits of a difference: that of its interval, or less where an end so near to 0 would be
 * rounded to it, so that an interval that leaves 0 out is seen to.
 */
export function differenceResolution(low: number, high: number): number {
  const nearest = Math.max(low, -high);
  return Math.min((high - low) / 2, nearest > 0 ? 4 * nearest : Number.POSITIVE_INFINITY);
}
