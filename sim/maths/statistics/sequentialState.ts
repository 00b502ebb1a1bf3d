import { estimateWithin, type Support } from "./estimateWithin.ts";

/** "relative": `value` is a share of the mean (of the base's mean for differences); else in the values' own unit. */
export interface Precision {
  kind: "relative" | "absolute";
  value: number;
}

/** When to stop, counted in observations (days, or pairs of antithetic days). */
export interface SequentialRule {
  halfWidth: Precision;
  atLeast: number;
  atMost: number;
}

export interface SequentialState {
  kind: "enough" | "more" | "ceiling";
  /** Observations that have a value. */
  n: number;
  halfWidth: number | null;
  /** The half-width asked for, in the values' unit; null while there is no mean to take a share of. */
  wanted: number | null;
  /** Observations in all at which to look again; those taken when the answer stands. */
  next: number;
}

/**
 * Whether enough was observed for an interval of the wanted half-width (Chow and Robbins 1965, Annals of Mathematical
 * Statistics 36). Stopping when the interval happens to be narrow makes it cover a little less often than stated when the
 * least number is small; 10 or more keep that small.
 *
 * `values`: all observations so far, null where one has no value; `support`: what their mean can be. `reference`: what a relative half-width is a share of;
 * the mean of the values when left out (for differences give the base's mean). `next` follows from the spread so far (half-width
 * shrinks with the square root of n) but at most doubles the number; it depends on the values alone.
 */
export function sequentialState(
  values: readonly (number | null)[],
  rule: SequentialRule,
  confidence: number,
  support: Support,
  reference?: number | null,
): SequentialState {
  const found = estimateWithin(reference === undefined ? support : "any", values, confidence);
  const taken = values.length;
  const about = reference === undefined ? (found?.mean ?? null) : reference;
  const wanted = wantedHalfWidth(rule.halfWidth, about);
  const halfWidth = found?.halfWidth ?? null;
  const state = { n: found?.n ?? 0, halfWidth, wanted };
  const narrow = halfWidth !== null && wanted !== null && halfWidth <= wanted;
  if (narrow && taken >= rule.atLeast) return { kind: "enough", ...state, next: taken };
  if (taken >= rule.atMost) return { kind: "ceiling", ...state, next: taken };
  const next = Math.min(rule.atMost, Math.max(rule.atLeast, nextLook(taken, halfWidth, wanted)));
  return { kind: "more", ...state, next };
}

function wantedHalfWidth({ kind, value }: Precision, about: number | null): number | null {
  if (kind === "absolute") return value;
  return about === null ? null : value * Math.abs(about);
}

function nextLook(taken: number, halfWidth: number | null, wanted: number | null): number {
  if (halfWidth === null || wanted === null || wanted === 0) return Math.max(2, 2 * taken);
  const needed = Math.ceil(taken * (halfWidth / wanted) ** 2);
  return Math.max(taken + 1, Math.min(2 * taken, needed));
}
