import { quantile } from "../../../maths/statistics/index.ts";
import { formatNumber } from "../../../text/units/index.ts";
import { type Check, fine, look } from "./check.ts";

/** A time that lies far from the others. */
export interface Outlier {
  value: number;
  line: number;
}

/** Quartile distances: far out, and outside (Tukey 1977). */
const FAR_OUT = 3;
const OUTSIDE = 1.5;

/**
 * Times beyond Tukey's far-out fences (1977, ch. 2) on the logarithms, since times are skewed to the right; a short one
 * must lie outside the plain fences as well, as logarithms make much of short times. Empty when the quartiles are one.
 */
export function outliersOf(times: readonly Outlier[]): Outlier[] {
  const sorted = times.map(({ value }) => value).sort((a, b) => a - b);
  if (sorted.length < 4) return [];
  const q1 = quantile(sorted, 0.25)!;
  const q3 = quantile(sorted, 0.75)!;
  if (q1 === q3) return [];
  const reach = FAR_OUT * Math.log(q3 / q1);
  const low = Math.min(q1 * Math.exp(-reach), q1 - OUTSIDE * (q3 - q1));
  const high = q3 * Math.exp(reach);
  return times.filter(({ value }) => value < low || value > high);
}

const MAX_SHOWN = 5;

/** Tells the outliers with their lines; nothing is taken out. */
export function outlierCheck(times: readonly Outlier[], unit: string): Check {
  const found = outliersOf(times);
  if (found.length === 0) return fine("outliers", "None far from the others.");
  const shown = found.slice(0, MAX_SHOWN).map(({ value, line }) => `${formatNumber(value, 6)} ${unit} in line ${line}`);
  const more = found.length > MAX_SHOWN ? ` and ${found.length - MAX_SHOWN} more` : "";
  return look(
    "outliers",
    `Far from the others: ${shown.join(", ")}${more}. They are kept; remove what was not this kind of work.`,
  );
}
