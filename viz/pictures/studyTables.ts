import type { Quantity } from "../frame/index.ts";
import { type ChartTable, quantityCell, quantityUnit } from "./chartTable.ts";
import type { CostColumns } from "./cost.ts";
import type { CurveColumns } from "./curve.ts";
import type { DifferenceColumns } from "./difference.ts";
import type { HeatMapColumns } from "./heatMap.ts";
import type { ResponseColumns } from "./response.ts";
import type { ScreeningColumns } from "./screening.ts";

/** The pictures of a study as tables. */

export function responseTable({ quantity, rows }: ResponseColumns): ChartTable {
  return {
    columns: [text("variant"), ...ends(quantity)],
    rows: rows.map(({ name, mean, low, high }) => [name, ...cells(quantity, mean, low, high)]),
  };
}

export function differenceTable({ quantity, rows }: DifferenceColumns): ChartTable {
  return {
    columns: [text("variant"), ...ends(quantity), text("difference shown")],
    rows: rows.map(({ name, mean, low, high, shown }) => [
      name,
      ...cells(quantity, mean, low, high),
      shown ? "yes" : "no",
    ]),
  };
}

export function curveTable({ quantity, lines, lineLabel, xLabel, xLevels }: CurveColumns): ChartTable {
  const level = (x: number) => xLevels.find((each) => each.x === x)?.text ?? x;
  return {
    columns: [...(lineLabel === "" ? [] : [text(lineLabel)]), text(xLabel), ...ends(quantity)],
    rows: lines.flatMap(({ label, points }) =>
      points.map(({ x, mean, low, high }) => [
        ...(lineLabel === "" ? [] : [label]),
        level(x),
        ...cells(quantity, mean, low, high),
      ]),
    ),
  };
}

export function heatMapTable(columns: HeatMapColumns): ChartTable {
  const { quantity } = columns;
  // About a time of day there is a span of time.
  const about = quantity.kind === "clock" ? ({ kind: "duration", label: quantity.label } as const) : quantity;
  return {
    columns: [
      text(columns.columnName),
      text(columns.rowName),
      { name: "mean", unit: quantityUnit(quantity) },
      { name: "half of its interval", unit: quantityUnit(about) },
      text("mark"),
    ],
    rows: columns.cells.map((cell) => [
      columns.columnLevels[cell.column]!,
      columns.rowLevels[cell.row]!,
      quantityCell(quantity, cell.value),
      quantityCell(about, cell.halfWidth),
      cell.mark,
    ]),
  };
}

export function costTable({ gain, cost, points }: CostColumns): ChartTable {
  return {
    columns: [text("variant"), ...ends(gain, `${gain.label}: `), ...ends(cost, `${cost.label}: `), text("undominated")],
    rows: points.map((point) => [
      point.name,
      ...cells(gain, point.gain.mean, point.gain.low, point.gain.high),
      ...cells(cost, point.cost.mean, point.cost.low, point.cost.high),
      point.undominated ? "yes" : "no",
    ]),
  };
}

export function screeningTable({ quantity, points }: ScreeningColumns): ChartTable {
  const unit = quantityUnit(quantity);
  return {
    columns: [text("factor"), { name: "mean size", unit }, { name: "half-width", unit }, { name: "spread", unit }],
    rows: points.map(({ name, muStar, halfWidth, sigma }) => [name, muStar, halfWidth, sigma]),
  };
}

function text(name: string) {
  return { name, unit: "" };
}

function ends(quantity: Quantity, before = "") {
  return ["mean", "low", "high"].map((name) => ({ name: before + name, unit: quantityUnit(quantity) }));
}

function cells(quantity: Quantity, mean: number | null, low: number | null, high: number | null) {
  return [mean, low, high].map((value) => quantityCell(quantity, value));
}
