import { normalQuantile } from "../../../maths/statistics/index.ts";
import { normalBelow } from "../families/standardNormal.ts";

/** A time in the order of the file. */
export interface OrderedTime {
  value: number;
  /** Still going on when the watching stopped. */
  open: boolean;
}

export interface CensoredTrend {
  /** Two-sided, by the score test. */
  p: number;
  /** How many times as likely to end at any moment a time is at the end of the file as at its start, with its interval. */
  ratio: number;
  low: number;
  high: number;
}

/** Logarithms of ratios are looked for as far as this. */
const FURTHEST = 12;

/**
 * Trend in the order of times some of which are open: proportional hazards with the place in the file, 0 to 1, as covariate
 * (Cox 1972, Journal of the Royal Statistical Society B 34; ties by Breslow). p, ratio and interval all come from the
 * score U / sqrt(V), so that the interval leaves 1 out exactly when p is below `1 - confidence`. Takes what cut a time off
 * as having nothing to do with its length.
 *
 * At least two ended times that differ; cost n squared. What lies beyond e^12 either way is given as infinite, or as 0:
 * where times only ever grow, the likelihood has no greatest value.
 */
export function censoredTrend(times: readonly OrderedTime[], confidence: number): CensoredTrend {
  const places = times.map((_, i) => (times.length === 1 ? 0 : i / (times.length - 1)));
  const order = times.map((_, i) => i).sort((a, b) => times[b]!.value - times[a]!.value);
  const score = (beta: number): number => scoreOf(times, places, order, beta);
  const z = normalQuantile((1 + confidence) / 2);
  const at = (wanted: number) => Math.exp(rootOf(score, wanted));
  return { p: 2 * normalBelow(-Math.abs(score(0))), ratio: at(0), low: at(z), high: at(-z) };
}

/** U / sqrt(V) of the partial likelihood, from the longest time down, so that those at risk only grow in number. */
function scoreOf(times: readonly OrderedTime[], places: readonly number[], order: readonly number[], beta: number) {
  let [weight, first, second, u, v] = [0, 0, 0, 0, 0];
  for (let i = 0; i < order.length; ) {
    const value = times[order[i]!]!.value;
    const ties: number[] = [];
    for (; i < order.length && times[order[i]!]!.value === value; i++) ties.push(order[i]!);
    for (const index of ties) {
      const w = Math.exp(beta * (places[index]! - 0.5));
      weight += w;
      first += w * places[index]!;
      second += w * places[index]! ** 2;
    }
    for (const index of ties) {
      if (times[index]!.open) continue;
      const mean = first / weight;
      u += places[index]! - mean;
      v += Math.max(0, second / weight - mean ** 2);
    }
  }
  return v > 0 ? u / Math.sqrt(v) : 0;
}

/** Where the falling score passes `wanted`. */
function rootOf(score: (beta: number) => number, wanted: number): number {
  let [low, high] = [-FURTHEST, FURTHEST];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (score(middle) > wanted) low = middle;
    else high = middle;
  }
  if (low === -FURTHEST) return Number.NEGATIVE_INFINITY;
  return high === FURTHEST ? Number.POSITIVE_INFINITY : (low + high) / 2;
}
