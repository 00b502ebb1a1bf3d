import { ticks } from "d3";
import { decimalsFor, formatClock, formatDecimals, timeUnitFor } from "../../sim/text/units/index.ts";

/** What a value axis measures. Clock values and durations come in seconds, shares as 0..1. */
export type Quantity =
  | { kind: "number"; label: string; unit: string }
  | { kind: "share"; label: string }
  | { kind: "duration"; label: string }
  /** Seconds after the day's start, shown as time of day. */
  | { kind: "clock"; label: string; startClockSeconds: number };

export interface QuantityTick {
  value: number;
  text: string;
}

/** Round ticks over [low, high], about `count` of them, with the text of each; units are on the axis label. */
export function quantityTicks(quantity: Quantity, low: number, high: number, count: number): QuantityTick[] {
  switch (quantity.kind) {
    case "clock":
      return clockTicks(quantity.startClockSeconds, low, high, count);
    case "duration":
      return scaledTicks(low, high, count, timeUnitFor(Math.max(Math.abs(low), Math.abs(high))).seconds);
    case "share":
      return scaledTicks(low, high, count, 0.01);
    case "number":
      return scaledTicks(low, high, count, 1);
  }
}

/** "heads out, heads/h": name and unit as an axis shows them; `largest` settles the unit of a duration. */
export function quantityLabel(quantity: Quantity, largest: number): string {
  switch (quantity.kind) {
    case "clock":
      return `${quantity.label}, clock time`;
    case "duration":
      return `${quantity.label}, ${timeUnitFor(largest).unit}`;
    case "share":
      return `${quantity.label}, %`;
    case "number":
      return quantity.unit === "" ? quantity.label : `${quantity.label}, ${quantity.unit}`;
  }
}

function scaledTicks(low: number, high: number, count: number, unit: number): QuantityTick[] {
  const values = ticks(low / unit, high / unit, count);
  const step = values.length > 1 ? values[1]! - values[0]! : 1;
  const decimals = Math.max(0, decimalsFor(step) - 1);
  return values.map((value) => ({ value: value * unit, text: formatDecimals(value, decimals) }));
}

const CLOCK_STEPS = [
  1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 14_400, 21_600, 43_200, 86_400,
];

function clockTicks(startClock: number, low: number, high: number, count: number): QuantityTick[] {
  const wanted = (high - low) / Math.max(1, count);
  const step = CLOCK_STEPS.find((candidate) => candidate >= wanted) ?? 86_400;
  const result: QuantityTick[] = [];
  const first = Math.ceil((low + startClock) / step - 1e-9) * step;
  for (let clock = first; clock <= high + startClock + 1e-6; clock += step) {
    result.push({ value: clock - startClock, text: formatClock(clock, step < 60) });
  }
  return result;
}
