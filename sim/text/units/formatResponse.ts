import { differenceUnit, type FigureKind, type FigureScale, figureText, signed, valueText } from "./figureText.ts";
import { intervalDecimals } from "./intervalDecimals.ts";
import { oneOf } from "./oneOf.ts";
import { timeUnitFor } from "./timeUnit.ts";

/** A figure with its interval, whose ends are null where there is none. */
export interface Ends {
  mean: number;
  low: number | null;
  high: number | null;
}

/**
 * A response's value as a reader wants it: "612 carcasses/h", "15:42", "12.3 %", "35.2 min", "2 h 40".
 * `startClockSeconds` (seconds after midnight) turns the seconds of a "clock" response into the time of day.
 */
export function formatResponse(value: number, info: FigureKind, startClockSeconds: number): string {
  return oneOf(valueText(value, info, startClockSeconds, alone(value)));
}

/**
 * A difference of two values: "+12.3 carcasses/h", "−8.2 min", "+1.2 percentage points". `plain` leaves a plus sign
 * out.
 */
export function formatSpan(value: number, info: FigureKind, style: "signed" | "plain" = "signed"): string {
  return oneOf(spanText(value, info, style, alone(value)));
}

/**
 * A response's mean and interval, with as many decimals as the interval's width allows, the same for all three (see
 * `intervalDecimals`): ["16.81 %", "16.78 to 16.85 %"]. The interval is "" where there is none.
 */
export function formatEstimate(ends: Ends, info: FigureKind, startClockSeconds: number): [string, string] {
  return withInterval(ends, (value, scale) => valueText(value, info, startClockSeconds, scale));
}

/**
 * The same of a difference: ["−8.2 min", "−9.1 to −7.3 min"]. `plain` leaves plus signs out. An interval that leaves 0 out
 * is written so finely that it is seen to.
 */
export function formatDifference(ends: Ends, info: FigureKind, style: "signed" | "plain" = "signed"): [string, string] {
  return withInterval(ends, (value, scale) => spanText(value, info, style, scale), apartFromZero);
}

/** "2.2 heads/h" of 2.14: a size that a difference stays below, rounded up to the last digit that its half-width allows. */
export function formatBound(value: number, halfWidth: number, info: FigureKind): string {
  const scale = { halfWidth, largest: Math.abs(value) };
  return oneOf(spanText(roundedUp(value, halfWidth, info), info, "plain", scale));
}

/** A value rounded up to the last digit with which a figure of this half-width is written beside others up to `largest`. */
export function roundedUp(value: number, halfWidth: number, { format }: FigureKind, largest = value): number {
  if (!(halfWidth > 0)) return value;
  const unit = format === "share" ? 0.01 : format === "number" ? 1 : timeUnitFor(largest).seconds;
  const step = unit * 10 ** -intervalDecimals(halfWidth / unit);
  return Math.ceil(value / step - 1e-9) * step;
}

/** "333.0 to 339.1 carcasses/h": two texts with a unit, which is said once where it is the same. */
export function formatRange(low: string, high: string): string {
  const unitAt = low.indexOf(" ");
  const unit = low.slice(unitAt);
  // "1 h 40 to 2 h 40" has no unit at its end that could be left out.
  const sameUnit = unitAt > 0 && !/ \d/.test(unit) && !/ h \d/.test(high) && unit === high.slice(high.indexOf(" "));
  return `${sameUnit ? low.slice(0, unitAt) : low} to ${high}`;
}

function alone(value: number): FigureScale {
  return { halfWidth: null, largest: Math.abs(value) };
}

function withInterval(
  { mean, low, high }: Ends,
  text: (value: number, scale: FigureScale) => string,
  finer: (low: number, high: number) => number = () => Number.POSITIVE_INFINITY,
): [string, string] {
  if (low === null || high === null) return [oneOf(text(mean, alone(mean))), ""];
  const halfWidth = Math.min((high - low) / 2, finer(low, high));
  const scale = { halfWidth, largest: Math.max(...[mean, low, high].map(Math.abs)) };
  return [oneOf(text(mean, scale)), formatRange(text(low, scale), text(high, scale))];
}

/** The half-width that is written with digits enough for the end next to 0 not to be rounded to it. */
function apartFromZero(low: number, high: number): number {
  const nearest = Math.max(low, -high);
  return nearest > 0 ? 4 * nearest : Number.POSITIVE_INFINITY;
}

function spanText(value: number, info: FigureKind, style: "signed" | "plain", scale: FigureScale): string {
  const { number, unit } = figureText(value, info, scale);
  return `${style === "signed" ? signed(value, number) : number} ${differenceUnit(info, unit)}`.trimEnd();
}
