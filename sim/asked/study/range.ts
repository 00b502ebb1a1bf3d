import { foundWords, type Reading, readClock, writeClock } from "../../text/units/index.ts";

/** The values between two ends of a factor, as a plan file would write them. */
export interface Range {
  /** How many values there are, both ends included; null where there is no end of them. */
  count: number | null;
  /** The value at 0 (`from`) to 1 (`to`); whole numbers are rounded. */
  at(fraction: number): unknown;
  /** Where each of `count` values shall be as likely: the value at 0 <= fraction < 1. The same as `at` for the others. */
  drawn(fraction: number): unknown;
}

const NUMBER_AND_UNIT = /^(-?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)(\s*)(\D.*)$/su;

/**
 * Reads the two ends of a factor's range: two numbers (whole numbers stay whole), two quantities in the same unit, two
 * shares in percent, or two times of day. Steps between are written to 1/10,000 of the range or finer.
 */
export function readRange(from: unknown, to: unknown): Reading<Range> {
  if (JSON.stringify(from) === JSON.stringify(to)) return noRange(`both ends are ${foundWords(from)}`);
  if (typeof from === "number" && typeof to === "number") {
    return Number.isFinite(to - from) ? { value: numberRange(from, to), fault: null } : tooWide(from, to);
  }
  if (typeof from !== "string" || typeof to !== "string") return noRange(`${foundWords(from)} to ${foundWords(to)}`);
  const clocks = clockRange(from, to);
  return clocks === null ? quantityRange(from, to) : { value: clocks, fault: null };
}

function numberRange(from: number, to: number): Range {
  return Number.isInteger(from) && Number.isInteger(to)
    ? wholeRange(from, to, (value) => value)
    : realRange(from, to, Number);
}

function wholeRange(from: number, to: number, write: (value: number) => unknown): Range {
  const count = Math.abs(to - from) + 1;
  const step = Math.sign(to - from);
  return {
    count,
    at: (fraction) => write(from + step * Math.round(fraction * (count - 1))),
    drawn: (fraction) => write(from + step * Math.min(Math.floor(fraction * count), count - 1)),
  };
}

/** `write` gets the number as text, rounded to what the range needs; the ends are kept to the digit. */
function realRange(from: number, to: number, write: (digits: string) => unknown): Range {
  const decimals = decimalsFor(Math.abs(to - from));
  const at = (fraction: number): unknown => {
    if (fraction <= 0) return write(String(from));
    if (fraction >= 1) return write(String(to));
    return write(String(Number((from + (to - from) * fraction).toFixed(decimals))));
  };
  return { count: null, at, drawn: at };
}

/** Digits after the point that tell apart 1/10,000 of a span and coarser. Taken from the text, which is exact. */
function decimalsFor(span: number): number {
  const exponent = Number(span.toExponential().split("e")[1]);
  return Math.min(Math.max(4 - exponent, 0), 100);
}

/** In minutes when both ends are full minutes, else in seconds. */
function clockRange(from: string, to: string): Range | null {
  const first = readClock(from);
  const last = readClock(to);
  if (first.fault !== null || last.fault !== null) return null;
  const step = first.value % 60 === 0 && last.value % 60 === 0 ? 60 : 1;
  return wholeRange(first.value / step, last.value / step, (value) => writeClock(value * step));
}

function quantityRange(from: string, to: string): Reading<Range> {
  const first = NUMBER_AND_UNIT.exec(from);
  const last = NUMBER_AND_UNIT.exec(to);
  if (first === null || last === null) return noRange(`${foundWords(from)} to ${foundWords(to)}`);
  const [, low, space, unit] = first as unknown as [string, string, string, string];
  if (unit !== last[3]) return noRange(`the ends have the units '${unit}' and '${last[3]}'`);
  if (Number(low) === Number(last[1])) return noRange(`both ends are ${foundWords(from)}`);
  if (!Number.isFinite(Number(last[1]) - Number(low))) return tooWide(from, to);
  const range = realRange(Number(low), Number(last[1]), (digits) => `${digits}${space}${unit}`);
  return { value: range, fault: null };
}

/** Arithmetic has no number for the way from one end to the other. */
function tooWide(from: unknown, to: unknown): Reading<never> {
  return noRange(`${foundWords(from)} to ${foundWords(to)} is too wide`);
}

function noRange(found: string): Reading<never> {
  const allowed =
    'two different numbers, quantities in the same unit, percentages or times of day, such as "5 s" and "8 s"';
  return { value: null, fault: { found, allowed, remedy: "anything else goes into levels" } };
}
