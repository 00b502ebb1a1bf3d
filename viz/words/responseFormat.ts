import type { ResponseInfo } from "../contract.ts";
import {
  formatClock,
  formatNumber,
  intervalDecimals,
  isolated,
  type Quantity,
  type TimeUnit,
  timeUnitFor,
} from "../frame/index.ts";

/** How the values of one response are written; every function takes the values in the response's own unit. */
export interface ResponseFormat {
  /** One value with its unit; `resolution` (say a half-width) settles the digits. */
  value: (value: number, resolution: number | null) => string;
  /** "584 to 592" without unit where it stands beside a value. */
  range: (low: number, high: number, resolution: number | null) => string;
  /** A difference with sign and unit. */
  difference: (value: number, resolution: number | null) => string;
  differenceRange: (low: number, high: number, resolution: number | null) => string;
  /** A difference as a comparison: "36 heads/h more", "35 min earlier". */
  comparison: (value: number, resolution: number | null) => string;
  /** Words for a negative and a positive difference. */
  sides: readonly [string, string];
  quantity: Quantity;
  differenceQuantity: Quantity;
  /** Factor from the response's own unit to that of `differenceQuantity`. */
  differenceScale: number;
}

/** Largest spans of time that will be written in one place, so that all of them take the same unit. Seconds. */
export interface LargestSpans {
  value: number;
  difference: number;
}

/**
 * The format of a response; `startClockSeconds` turns seconds after the day's start into times of day. Without `largest`
 * every span of time takes the unit that suits itself.
 */
export function responseFormat(info: ResponseInfo, startClockSeconds: number, largest?: LargestSpans): ResponseFormat {
  switch (info.format) {
    case "clock":
      return clockFormat(info, startClockSeconds, largest);
    case "duration":
      return durationFormat(info, ["shorter", "longer"], largest);
    case "share":
      return shareFormat(info);
    case "number":
      return numberFormat(info);
  }
}

function numberFormat(info: ResponseInfo): ResponseFormat {
  const unit = info.unit === "" ? "" : ` ${isolated(info.unit)}`;
  const plain = (value: number, resolution: number | null) => formatNumber(value, digits(value, resolution));
  return {
    value: (value, resolution) => plain(value, resolution) + unit,
    range: (low, high, resolution) => `${plain(low, resolution)} to ${plain(high, resolution)}`,
    difference: (value, resolution) => signed(value, plain(value, resolution)) + unit,
    differenceRange: (low, high, resolution) => signedRange(low, high, (value) => plain(value, resolution)),
    comparison: (value, resolution) => `${plain(Math.abs(value), resolution)}${unit} ${value < 0 ? "less" : "more"}`,
    sides: ["less", "more"],
    quantity: { kind: "number", label: isolated(info.label), unit: isolated(info.unit) },
    differenceQuantity: { kind: "number", label: "difference to today's plan", unit: isolated(info.unit) },
    differenceScale: 1,
  };
}

function shareFormat(info: ResponseInfo): ResponseFormat {
  const points = (value: number, resolution: number | null) =>
    formatNumber(value * 100, digits(value * 100, resolution === null ? null : resolution * 100));
  return {
    value: (value, resolution) => `${points(value, resolution)} %`,
    range: (low, high, resolution) => `${points(low, resolution)} to ${points(high, resolution)} %`,
    difference: (value, resolution) => `${signed(value, points(value, resolution))} points`,
    differenceRange: (low, high, resolution) => signedRange(low, high, (value) => points(value, resolution)),
    comparison: (value, resolution) =>
      `${points(Math.abs(value), resolution)} percentage points ${value < 0 ? "less" : "more"}`,
    sides: ["less", "more"],
    quantity: { kind: "share", label: isolated(info.label) },
    differenceQuantity: { kind: "number", label: "difference to today's plan", unit: "percentage points" },
    differenceScale: 100,
  };
}

function durationFormat(info: ResponseInfo, sides: readonly [string, string], largest?: LargestSpans): ResponseFormat {
  const values = spanFormat(largest?.value);
  const differences = spanFormat(largest?.difference);
  return {
    value: values.single,
    range: (low, high, resolution) => values.range(low, high, resolution, (_, text) => text),
    difference: (value, resolution) => signed(value, differences.single(value, resolution)),
    differenceRange: (low, high, resolution) => differences.range(low, high, resolution, signed),
    comparison: (value, resolution) => `${differences.single(Math.abs(value), resolution)} ${sides[value < 0 ? 0 : 1]}`,
    sides,
    quantity: { kind: "duration", label: isolated(info.label) },
    differenceQuantity: { kind: "duration", label: "difference to today's plan" },
    differenceScale: 1,
  };
}

/** Spans of time in the unit that suits `largest`, or each its own. */
function spanFormat(largest: number | undefined) {
  const text = (value: number, resolution: number | null, unit: TimeUnit) => {
    const scaled = value / unit.seconds;
    return formatNumber(scaled, digits(scaled, resolution === null ? null : resolution / unit.seconds));
  };
  return {
    single: (value: number, resolution: number | null) => {
      const unit = timeUnitFor(largest ?? value);
      return `${text(value, resolution, unit)} ${unit.unit}`;
    },
    range: (low: number, high: number, resolution: number | null, sign: (value: number, text: string) => string) => {
      const unit = timeUnitFor(largest ?? Math.max(Math.abs(low), Math.abs(high)));
      const [from, to] = [sign(low, text(low, resolution, unit)), sign(high, text(high, resolution, unit))];
      return `${from} to ${to} ${unit.unit}`;
    },
  };
}

function clockFormat(info: ResponseInfo, startClockSeconds: number, largest?: LargestSpans): ResponseFormat {
  const clock = (value: number, resolution: number | null) =>
    formatClock(value + startClockSeconds, resolution !== null && resolution < 60);
  return {
    ...durationFormat(info, ["earlier", "later"], largest),
    value: clock,
    range: (low, high, resolution) => `${clock(low, resolution)} to ${clock(high, resolution)}`,
    quantity: { kind: "clock", label: isolated(info.label), startClockSeconds },
  };
}

/** As the half-width has it; without one, three or so digits of the value itself. */
function digits(value: number, resolution: number | null): number {
  const size = Math.abs(value);
  const fallback = size >= 100 || Number.isInteger(value) ? 0 : size >= 10 ? 1 : 2;
  // Days that are all alike leave an interval of rounding errors, which is no resolution to write by.
  return resolution === null || resolution <= 1e-9 * size ? fallback : intervalDecimals(resolution);
}

function signed(value: number, text: string): string {
  return value > 0 && /[1-9]/.test(text) ? `+${text}` : text;
}

function signedRange(low: number, high: number, text: (value: number) => string): string {
  return `${signed(low, text(low))} to ${signed(high, text(high))}`;
}
