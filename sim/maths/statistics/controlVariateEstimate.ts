import { type Estimate, estimate } from "./estimate.ts";
import { fitControls } from "./fitControls.ts";
import { pairedTest } from "./pairedTest.ts";
import { studentQuantile } from "./studentQuantile.ts";

/** One control: what it is called, its known mean, and its value in each replication. */
export interface ControlValues {
  key: string;
  mean: number;
  values: readonly (number | null)[];
}

export interface ControlUsed {
  key: string;
  /** Change of the response with one unit of the control; null when it did not vary or repeats the others. */
  coefficient: number | null;
  /** Sample mean minus known mean. */
  missed: number;
  /** The sample mean is so far from the known one that this is hardly the true one (p < 0.001). */
  doubtful: boolean;
}

/** An estimate with the luck of the controls taken out; `sd` is what is left unexplained. */
export interface ControlVariateEstimate extends Estimate {
  df: number | null;
  /** The same without controls, over the same replications. */
  plain: Estimate;
  controls: ControlUsed[];
  /** Half-width by that without controls; above 1 the degrees of freedom cost more than was gained. */
  halfWidthRatio: number | null;
  words: string;
}

const DOUBTFUL = 0.001;

/**
 * Mean of a response corrected by what the controls missed their known means by, with its Student-t interval: linear
 * regression on the controls, read off at their known means, q degrees of freedom lost for q controls (Lavenberg and
 * Welch 1981, Management Science 27(3)). Exact for jointly normal values, else a small bias of order 1/n remains, because
 * the coefficients come from the same replications.
 *
 * `values[replication]` as in every control; a replication with a null anywhere is left out. Null when none is left.
 * With fewer than q + 3 replications the controls are left aside, and the words say so. Takes antithetic pair means
 * like any other observations.
 */
export function controlVariateEstimate(
  values: readonly (number | null)[],
  controls: readonly ControlValues[],
  confidence: number,
): ControlVariateEstimate | null {
  const kept = values.flatMap((value, index) =>
    value === null || controls.some((control) => (control.values[index] ?? null) === null) ? [] : [index],
  );
  const y = kept.map((index) => values[index]!);
  const plain = estimate(y, confidence);
  if (plain === null) return null;
  const offsets = controls.map(({ mean, values: x }) => kept.map((index) => x[index]! - mean));
  const used = offsets.map((offset, control) => about(controls[control]!.key, offset, confidence));
  if (plain.n < controls.length + 3 || controls.length === 0) return unused(plain, used, controls.length);
  const fit = fitControls(y, offsets);
  const df = plain.n - 1 - fit.coefficients.filter((coefficient) => coefficient !== null).length;
  const sd = Math.sqrt(fit.residualSquares / df);
  const halfWidth = studentQuantile((1 + confidence) / 2, df) * sd * Math.sqrt(1 / plain.n + fit.leverage);
  const found = { ...plain, mean: fit.intercept, sd, halfWidth };
  const interval = { low: found.mean - halfWidth, high: found.mean + halfWidth };
  const told = used.map((control, index) => ({ ...control, coefficient: fit.coefficients[index]! }));
  const halfWidthRatio = plain.halfWidth! > 0 ? halfWidth / plain.halfWidth! : null;
  return { ...found, ...interval, df, plain, controls: told, halfWidthRatio, words: wordsFor(halfWidthRatio, told) };
}

function about(key: string, offset: readonly number[], confidence: number): ControlUsed {
  const found = estimate(offset, confidence)!;
  const test = pairedTest(found);
  return { key, coefficient: null, missed: found.mean, doubtful: test !== null && test.p < DOUBTFUL };
}

function unused(plain: Estimate, controls: ControlUsed[], count: number): ControlVariateEstimate {
  const df = plain.n < 2 ? null : plain.n - 1;
  const words =
    count === 0 ? "No controls." : `Controls left aside: ${count} of them need ${count + 3} replications or more.`;
  return { ...plain, df, plain, controls, halfWidthRatio: null, words };
}

function wordsFor(ratio: number | null, controls: readonly ControlUsed[]): string {
  const used = controls.filter(({ coefficient }) => coefficient !== null).length;
  const percent = ratio === null ? 0 : Math.round(Math.abs(1 - ratio) * 100);
  const effect = `made the interval ${percent} % ${ratio !== null && ratio < 1 ? "narrower" : "wider"}`;
  const change = percent === 0 ? "; the interval is as wide as without" : ` ${effect}`;
  const doubts = controls
    .filter(({ doubtful }) => doubtful)
    .map(({ key }) => ` The known mean of '${key}' hardly fits these days: check it.`);
  return `${used} of ${controls.length} controls used${change}.${doubts.join("")}`;
}
