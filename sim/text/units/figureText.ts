import { formatClock } from "./formatClock.ts";
import { formatDecimals } from "./formatDecimals.ts";
import { intervalDecimals } from "./intervalDecimals.ts";
import { timeUnitFor } from "./timeUnit.ts";

/** What a figure is: "clock" and "duration" come in seconds, "share" as 0..1, "number" in `unit`. */
export interface FigureKind {
  format: "clock" | "duration" | "share" | "number";
  unit: string;
}

/** How finely a figure is written, and in which unit of time. In the figure's own unit. */
export interface FigureScale {
  /** Of its interval; null without one. */
  halfWidth: number | null;
  /** Size of the largest that stands beside it. */
  largest: number;
}

/** A figure's number and unit as text, apart. */
export interface FigureText {
  number: string;
  unit: string;
}

/**
 * A figure, or a difference of two, as number and unit: the one rule by which terminal, report and page write. Behind the
 * point it has the digits that its interval allows (`intervalDecimals`), or three significant ones without one; a span of
 * time takes the unit that suits the largest beside it. Long spans are hours and minutes, "2 h 40", all in `number`.
 */
export function figureText(value: number, { format, unit }: FigureKind, scale: FigureScale): FigureText {
  if (format === "share") return { number: numberText(100 * value, inUnits(scale, 0.01)), unit: "%" };
  if (format === "number") return { number: numberText(value, scale), unit };
  if (isInHours(scale)) return { number: hoursText(value), unit: "" };
  const time = timeUnitFor(scale.largest);
  return { number: numberText(value / time.seconds, inUnits(scale, time.seconds)), unit: time.unit };
}

/** Days that are all alike leave an interval of rounding errors, which is no width to write by. */
const ROUNDING = 1e-9;

/** Seconds in a minute, minutes in an hour. */
const MINUTE = 60;
const HOUR = 60;
/** Seconds from which spans are written in hours and minutes, and the half-width from which minutes are fine enough. */
const LONG = 7200;

function isInHours({ halfWidth, largest }: FigureScale): boolean {
  const fine = halfWidth !== null && halfWidth > ROUNDING * largest && halfWidth < MINUTE;
  return Math.abs(largest) >= LONG && !fine;
}

/** "2 h 40"; where it stands beside such, "25 min" and "12 s"; "\u22122 h 40". */
function hoursText(seconds: number): string {
  const [whole, minutes] = [Math.round(Math.abs(seconds)), Math.round(Math.abs(seconds) / MINUTE)];
  const sign = seconds < 0 && whole > 0 ? "\u2212" : "";
  if (whole > 0 && whole < MINUTE) return `${sign}${whole} s`;
  if (minutes < HOUR) return `${sign}${minutes} min`;
  return `${sign}${Math.floor(minutes / HOUR)} h ${String(minutes % HOUR).padStart(2, "0")}`;
}

/** A difference's unit in full: of shares in percentage points. */
export function differenceUnit({ format }: FigureKind, unit: string): string {
  return format === "share" ? "percentage points" : unit;
}

/** A figure with its unit: "612 carcasses/h", "15:42", "12.3 %", "35.2 min", "2 h 40". `startClockSeconds` is after midnight. */
export function valueText(value: number, kind: FigureKind, startClockSeconds: number, scale: FigureScale): string {
  if (kind.format === "clock") return formatClock(startClockSeconds + value);
  const { number, unit } = figureText(value, kind, scale);
  return `${number} ${unit}`.trimEnd();
}

/** The number with a plus sign where it is above 0 as written. */
export function signed(value: number, number: string): string {
  return value > 0 && /[1-9]/.test(number) ? `+${number}` : number;
}

function inUnits({ halfWidth, largest }: FigureScale, unit: number): FigureScale {
  return { halfWidth: halfWidth === null ? null : halfWidth / unit, largest: largest / unit };
}

function numberText(value: number, { halfWidth, largest }: FigureScale): string {
  if (halfWidth !== null && halfWidth > ROUNDING * largest) return formatDecimals(value, intervalDecimals(halfWidth));
  // What rounding left of a whole number is no digit of it.
  const exact = Number(value.toPrecision(9));
  return formatDecimals(exact, decimalsAlone(exact));
}

function decimalsAlone(value: number): number {
  const size = Math.abs(value);
  if (Number.isInteger(value) || size >= 100) return 0;
  return size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.001 ? 3 : 5;
}
