import { type FigureScale, figureText, formatClock, oneOf, roundedUp, signed } from "../../sim/text/units/index.ts";
import type { ResponseInfo } from "../contract.ts";
import { isolated, type Quantity } from "../frame/index.ts";

/** How the values of one response are written; every function takes the values in the response's own unit. */
export interface ResponseFormat {
  /** One value with its unit; `resolution` (say a half-width) settles the digits. */
  value: (value: number, resolution: number | null) => string;
  /** "584 to 592" without unit where it stands beside a value. */
  range: (low: number, high: number, resolution: number | null) => string;
  /** A difference with sign and unit. */
  difference: (value: number, resolution: number | null) => string;
  differenceRange: (low: number, high: number, resolution: number | null) => string;
  /** Sizes without sign, "67 to 71 min", beside a comparison that says the direction. */
  sizeRange: (low: number, high: number, resolution: number | null) => string;
  /** A difference without its direction: "36 heads/h", "2.1 percentage points". */
  size: (value: number, resolution: number | null) => string;
  /** What a difference stays below, without its direction, rounded up: "36 heads/h", "2.1 percentage points". */
  bound: (value: number, resolution: number | null) => string;
  /** A difference as a comparison: "36 heads/h more", "35 min earlier". */
  comparison: (value: number, resolution: number | null) => string;
  /** What one value is of. */
  period: "day" | "week";
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
export function responseFormat(
  info: ResponseInfo,
  startClockSeconds: number,
  largest?: LargestSpans,
  period: ResponseFormat["period"] = "day",
): ResponseFormat {
  const values = writerOf(info, largest?.value);
  const differences = writerOf(info, largest?.difference);
  const clock = (value: number) => formatClock(value + startClockSeconds);
  const isClock = info.format === "clock";
  const [fewer, more] = SIDES[info.format];
  const size = (value: number, resolution: number | null) =>
    differences.single(Math.abs(value), resolution, "percentage points");
  return {
    value: (value, resolution) => (isClock ? clock(value) : values.single(value, resolution)),
    range: (low, high, resolution) =>
      isClock ? `${clock(low)} to ${clock(high)}` : values.range(low, high, resolution, (_, text) => text),
    difference: (value, resolution) => signed(value, differences.single(value, resolution, "points")),
    differenceRange: (low, high, resolution) => differences.range(low, high, resolution, signed, ""),
    sizeRange: (low, high, resolution) => differences.range(low, high, resolution, (_, text) => text, ""),
    size,
    bound: (value, resolution) => size(roundedUp(value, resolution ?? 0, info, largest?.difference), resolution),
    comparison: (value, resolution) => `${size(value, resolution)} ${value < 0 ? fewer : more}`,
    period,
    sides: [fewer, more],
    quantity: quantityOf(info, startClockSeconds),
    differenceQuantity: differenceQuantityOf(info),
    differenceScale: info.format === "share" ? 100 : 1,
  };
}

const SIDES = {
  clock: ["earlier", "later"],
  duration: ["shorter", "longer"],
  share: ["less", "more"],
  number: ["less", "more"],
} as const;

/** Figures of one response with their units; `points` is what a difference of shares has for its unit. */
function writerOf(info: ResponseInfo, largest: number | undefined) {
  const parts = (value: number, resolution: number | null, beside: number, points = "%") => {
    const scale: FigureScale = { halfWidth: resolution, largest: largest ?? beside };
    const { number, unit } = figureText(value, info, scale);
    return { number, unit: info.format === "share" ? points : isolated(unit) };
  };
  return {
    single: (value: number, resolution: number | null, points?: string) => {
      const { number, unit } = parts(value, resolution, Math.abs(value), points);
      return oneOf(`${number} ${unit}`.trimEnd());
    },
    range: (
      low: number,
      high: number,
      resolution: number | null,
      sign: (value: number, text: string) => string,
      points?: string,
    ) => {
      const beside = Math.max(Math.abs(low), Math.abs(high));
      const [from, to] = [low, high].map((end) => parts(end, resolution, beside, points));
      const unit = info.format === "number" ? "" : ` ${to!.unit}`;
      return `${sign(low, from!.number)} to ${sign(high, to!.number)}${unit}`.trimEnd();
    },
  };
}

function quantityOf(info: ResponseInfo, startClockSeconds: number): Quantity {
  const label = isolated(info.label);
  if (info.format === "clock") return { kind: "clock", label, startClockSeconds };
  if (info.format === "number") return { kind: "number", label, unit: isolated(info.unit) };
  return { kind: info.format, label };
}

function differenceQuantityOf(info: ResponseInfo): Quantity {
  const label = "difference to today's plan";
  if (info.format === "share") return { kind: "number", label, unit: "percentage points" };
  return info.format === "number" ? { kind: "number", label, unit: isolated(info.unit) } : { kind: "duration", label };
}
