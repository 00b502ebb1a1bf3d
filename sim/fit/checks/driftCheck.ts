import { formatP } from "../../statistics/index.ts";
import { formatNumber } from "../../units/index.ts";
import { normalBelow } from "../families/standardNormal.ts";
import { CHECK_ALPHA, type Check, fine, look, notChecked } from "./check.ts";

const LEAST = 10;

/**
 * Two-sided p-value of a trend in the order of the values (Mann 1945, Econometrica 13; Kendall 1975, with his correction
 * for ties and for continuity); the sign tells which way. Wants 10 values. Cost n squared.
 */
export function mannKendall(values: readonly number[]): { s: number; p: number } {
  const n = values.length;
  let s = 0;
  for (let i = 0; i < n; i++) for (let j = i + 1; j < n; j++) s += Math.sign(values[j]! - values[i]!);
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const term = (t: number) => t * (t - 1) * (2 * t + 5);
  const ties = [...counts.values()].reduce((sum, t) => sum + term(t), 0);
  const variance = (term(n) - ties) / 18;
  if (variance === 0 || s === 0) return { s, p: 1 };
  return { s, p: Math.min(1, 2 * normalBelow(-(Math.abs(s) - 1) / Math.sqrt(variance))) };
}

/** Whether times grow longer or shorter as the study goes on. `ordered`: ended times as they were taken. */
export function driftCheck(ordered: readonly number[], unit: string): Check {
  if (ordered.length < LEAST) return notChecked("drift", `Fewer than ${LEAST} times.`);
  const { s, p } = mannKendall(ordered);
  if (p >= CHECK_ALPHA) return fine("drift", `No trend in the order of the file (${formatP(p)}).`, p);
  const half = Math.floor(ordered.length / 2);
  const first = meanText(ordered.slice(0, half), unit);
  const second = meanText(ordered.slice(-half), unit);
  const way = s > 0 ? "longer" : "shorter";
  return look(
    "drift",
    `Times grow ${way} in the order of the file: mean ${first} in its first half, ${second} in its second (${formatP(p)}). Tired, learning, or another product?`,
    p,
  );
}

function meanText(values: readonly number[], unit: string): string {
  return `${formatNumber(values.reduce((sum, value) => sum + value, 0) / values.length)} ${unit}`;
}
