import { formatClock } from "../../sim/text/units/index.ts";
import type { Quantity } from "../frame/index.ts";

export type Cell = string | number | null;

/** The figures of a picture as a table: numbers stay numbers, in the unit of their column; null where there is none. */
export interface ChartTable {
  columns: readonly { name: string; unit: string }[];
  rows: readonly (readonly Cell[])[];
}

/** A value of an axis as a cell, and the unit of its column: durations in seconds, shares in per cent, clock times as text. */
export function quantityCell(quantity: Quantity, value: number | null): Cell {
  if (value === null || !Number.isFinite(value)) return null;
  if (quantity.kind === "clock") return formatClock(value + quantity.startClockSeconds, true);
  return quantity.kind === "share" ? value * 100 : value;
}

export function quantityUnit(quantity: Quantity): string {
  switch (quantity.kind) {
    case "clock":
      return "clock time";
    case "duration":
      return "s";
    case "share":
      return "%";
    case "number":
      return quantity.unit;
  }
}

export function textColumn(name: string) {
  return { name, unit: "" };
}

export function secondsColumn(name: string) {
  return { name, unit: "s" };
}

/** Mean and ends of an interval in the unit of an axis. */
export function endColumns(quantity: Quantity, before = "") {
  return ["mean", "low", "high"].map((name) => ({ name: before + name, unit: quantityUnit(quantity) }));
}

export function endCells(quantity: Quantity, { mean, low, high }: PartialEnds): Cell[] {
  return [mean, low, high].map((value) => quantityCell(quantity, value));
}

/** A mean with its interval, each null where there is none. */
export interface PartialEnds {
  mean: number | null;
  low: number | null;
  high: number | null;
}
