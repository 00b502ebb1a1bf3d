import { intervalDecimals } from "./intervalDecimals.ts";

/** How the values of a response are written. */
export interface ValueFormat {
  unit: string;
  /** "clock": seconds after the day's start, shown as a time of day. */
  format: "number" | "clock" | "share" | "duration";
}

/** A figure with its interval, whose ends are null where there is none. */
export interface Ends {
  mean: number;
  low: number | null;
  high: number | null;
}

/** How finely a number is written, and in which unit of time. */
interface Scale {
  /** Null without an interval. */
  halfWidth: number | null;
  /** Size of the largest number that stands beside it. */
  largest: number;
}

/**
 * A response's value as a reader wants it: "612.3 carcasses/h", "15:42", "12.3 %", "35.2 min".
 * `startClockSeconds` (seconds after midnight) turns the seconds of a "clock" response into the time of day.
 */
export function formatResponse(value: number, info: ValueFormat, startClockSeconds: number): string {
  return responseText(value, info, startClockSeconds, alone(value));
}

/**
 * A difference of two values: "+12.3 carcasses/h", "-8.2 min", "+1.2 percentage points". `plain` leaves a plus sign
 * out.
 */
export function formatSpan(value: number, info: ValueFormat, style: "signed" | "plain" = "signed"): string {
  return spanText(value, info, style, alone(value));
}

/**
 * A response's mean and interval, with as many decimals as the interval's width allows, the same for all three (see
 * `intervalDecimals`): ["16.81 %", "16.78 to 16.85 %"]. The interval is "" where there is none.
 */
export function formatEstimate(ends: Ends, info: ValueFormat, startClockSeconds: number): [string, string] {
  return withInterval(ends, (value, scale) => responseText(value, info, startClockSeconds, scale));
}

/**
 * The same of a difference: ["-8.2 min", "-9.1 to -7.3 min"]. `plain` leaves plus signs out. An interval that leaves 0 out
 * is written so finely that it is seen to.
 */
export function formatDifference(
  ends: Ends,
  info: ValueFormat,
  style: "signed" | "plain" = "signed",
): [string, string] {
  return withInterval(ends, (value, scale) => spanText(value, info, style, scale), apartFromZero);
}

/** "333.0 to 339.1 carcasses/h": two texts with a unit, which is said once where it is the same. */
export function formatRange(low: string, high: string): string {
  const unitAt = low.indexOf(" ");
  const sameUnit = unitAt > 0 && low.slice(unitAt) === high.slice(high.indexOf(" "));
  return `${sameUnit ? low.slice(0, unitAt) : low} to ${high}`;
}

function alone(value: number): Scale {
  return { halfWidth: null, largest: Math.abs(value) };
}

function withInterval(
  { mean, low, high }: Ends,
  text: (value: number, scale: Scale) => string,
  finer: (low: number, high: number) => number = () => Number.POSITIVE_INFINITY,
): [string, string] {
  if (low === null || high === null) return [text(mean, alone(mean)), ""];
  const halfWidth = Math.min((high - low) / 2, finer(low, high));
  const scale = { halfWidth, largest: Math.max(...[mean, low, high].map(Math.abs)) };
  return [text(mean, scale), formatRange(text(low, scale), text(high, scale))];
}

/** The half-width that is written with digits enough for the end next to 0 not to be rounded to it. */
function apartFromZero(low: number, high: number): number {
  const nearest = Math.max(low, -high);
  return nearest > 0 ? 4 * nearest : Number.POSITIVE_INFINITY;
}

function responseText(value: number, info: ValueFormat, startClockSeconds: number, scale: Scale): string {
  if (info.format === "clock") return formatClock(startClockSeconds + value);
  if (info.format === "duration") return formatDuration(value, scale);
  if (info.format === "share") return `${numberText(100 * value, hundredfold(scale))} %`;
  return `${numberText(value, scale)} ${info.unit}`.trimEnd();
}

function spanText(value: number, info: ValueFormat, style: "signed" | "plain", scale: Scale): string {
  const sign = style === "signed" && value > 0 ? "+" : "";
  if (info.format === "clock" || info.format === "duration") return sign + formatDuration(value, scale);
  if (info.format === "share") return `${sign}${numberText(100 * value, hundredfold(scale))} percentage points`;
  return `${sign}${numberText(value, scale)} ${info.unit}`.trimEnd();
}

function hundredfold({ halfWidth, largest }: Scale): Scale {
  return { halfWidth: halfWidth === null ? null : 100 * halfWidth, largest: 100 * largest };
}

/** Hours and minutes of a 24-hour clock, to the nearest minute; later days are counted ("01:10 +1 d"). */
function formatClock(secondsAfterMidnight: number): string {
  const minutes = Math.round(secondsAfterMidnight / 60);
  const days = Math.floor(minutes / 1440);
  const two = (count: number): string => String(count).padStart(2, "0");
  const time = `${two(Math.floor((minutes - days * 1440) / 60))}:${two(minutes % 60)}`;
  return days === 0 ? time : `${time} ${days > 0 ? "+" : ""}${days} d`;
}

/** Seconds up to two minutes, minutes up to two hours, then hours: in the unit of the largest that stands beside it. */
function formatDuration(seconds: number, scale: Scale): string {
  if (scale.largest < 120) return `${numberText(seconds, scale)} s`;
  if (scale.largest < 7200) return `${numberText(seconds, scale, 60)} min`;
  return `${numberText(seconds, scale, 3600)} h`;
}

/** Days that are all alike leave an interval of rounding errors, which is no width to write by. */
const ROUNDING = 1e-9;

/** A number in units of `unit`. */
function numberText(value: number, { halfWidth, largest }: Scale, unit = 1): string {
  if (halfWidth === null || halfWidth <= ROUNDING * largest)
    return plainNumber(halfWidth === null ? value / unit : Number((value / unit).toPrecision(9)));
  return rounded(value / unit, intervalDecimals(halfWidth / unit));
}

/** "-0" is 0; decimals below 0 round to tens or hundreds. */
function rounded(value: number, decimals: number): string {
  const step = Number(`1e${Math.max(0, -decimals)}`);
  const text = decimals > 0 ? value.toFixed(decimals) : (Math.round(value / step) * step).toFixed(0);
  return Number(text) === 0 && text.startsWith("-") ? text.slice(1) : text;
}

/** At most four significant digits before the point is reached, never an exponent; "-0" is 0. */
function plainNumber(value: number): string {
  const size = Math.abs(value);
  if (Number.isInteger(value)) return String(value + 0);
  return rounded(value, size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.001 ? 3 : 5);
}
