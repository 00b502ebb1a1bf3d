import { scaleLinear } from "d3";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawText,
  emptyChart,
  type Quantity,
  readable,
  wrapText,
} from "../frame/index.ts";
import { drawLevelInterval } from "../marks/index.ts";

export interface ResponseRow {
  name: string;
  /** Null: no replication gave a value. */
  mean: number | null;
  /** Null where there is no interval (fewer than two replications). */
  low: number | null;
  high: number | null;
  /** Mean and interval in words, units included. */
  text: string;
}

export interface ResponseColumns extends ChartWords {
  quantity: Quantity;
  rows: readonly ResponseRow[];
  /** Row whose interval is drawn as a band through all others; null for none. */
  base: number | null;
}

const GUTTER = 190;
const TEXT_GUTTER = 178;
const MOST_LINES = 3;

/** One response over the variants: dot and interval, the base's interval as a band, figures at the right. */
export function responseChart(columns: ResponseColumns, context: ChartContext): SVGSVGElement {
  const known = columns.rows.filter((row) => row.mean !== null);
  if (known.length === 0) return emptyChart(columns, "No replication gave a value for this response.", context);
  const frame = chartFrame(columns, context);
  const [low, high] = paddedDomain(columns.rows);
  const value = scaleLinear()
    .domain([low, high])
    .range([frame.left + GUTTER, frame.right - TEXT_GUTTER]);
  const top = frame.top + 14;
  const row = rowHeight(columns.rows, GUTTER - 12);
  const bottom = top + columns.rows.length * row;
  drawBaseBand(frame, columns, value, top, bottom);
  const end = drawBottomAxis(frame.body, value, columns.quantity, top, bottom, frame.colour);
  columns.rows.forEach((entry, index) => {
    drawRow(frame, entry, value, top + (index + 0.5) * row);
  });
  return frame.finish(end);
}

/** Ends of an axis that leaves 8 % of air around all intervals; a single value gets 1 % of itself, or 1. */
export function paddedDomain(
  rows: readonly { mean: number | null; low: number | null; high: number | null }[],
): [number, number] {
  const values = rows.flatMap((row) => [row.mean, row.low, row.high]).filter((value) => value !== null);
  const low = Math.min(...values);
  const high = Math.max(...values);
  const air = high > low ? (high - low) * 0.08 : Math.abs(high) * 0.01 || 1;
  return [low - air, high + air];
}

function drawBaseBand(
  frame: ChartFrame,
  columns: ResponseColumns,
  value: (v: number) => number,
  top: number,
  bottom: number,
): void {
  const base = columns.base === null ? undefined : columns.rows[columns.base];
  if (!base || base.low === null || base.high === null || columns.rows.length < 2) return;
  const from = value(base.low);
  const width = Math.max(1, value(base.high) - from);
  const band = frame.body
    .append("rect")
    .attr("x", from.toFixed(1))
    .attr("y", top)
    .attr("height", bottom - top);
  band.attr("width", width.toFixed(1)).attr("fill", frame.colour("base"));
  const [left, right] = [frame.left + GUTTER, frame.right - TEXT_GUTTER];
  const middle = Math.min(Math.max(from + width / 2, left + 56), right - 56);
  drawText(frame.body, middle, top - 5, "interval of the base", { anchor: "middle", fill: frame.colour("muted") });
}

function drawRow(frame: ChartFrame, row: ResponseRow, value: (v: number) => number, y: number): void {
  const group = readable(frame.body, `${row.name}: ${row.text}`);
  drawNames(frame, row.name, y, GUTTER - 12);
  if (row.mean !== null) {
    drawLevelInterval(
      group,
      value(row.mean),
      row.low === null ? null : value(row.low),
      row.high === null ? null : value(row.high),
      y,
      { stroke: frame.colour("line"), paper: frame.colour("paper"), filled: true },
    );
  }
  drawFigures(frame, row.text, y, TEXT_GUTTER - 12);
}

/** A variant's name at the left, up to three lines around `y`. */
export function drawNames(frame: ChartFrame, name: string, y: number, room: number): void {
  const lines = wrapText(name, room, 12, MOST_LINES);
  lines.forEach((line, i) => {
    drawText(frame.body, frame.left, y + 4 + (i - (lines.length - 1) / 2) * 15, line, { size: 12 });
  });
}

/** Height of every row: enough for the longest of the names. */
export function rowHeight(rows: readonly { name: string }[], room: number): number {
  const most = Math.max(...rows.map((row) => wrapText(row.name, room, 12, MOST_LINES).length));
  return most === 1 ? 36 : 10 + most * 15;
}

/** Figures at the right, up to two lines around `y`. */
export function drawFigures(frame: ChartFrame, text: string, y: number, room: number): void {
  const lines = text.split("\n").flatMap((part) => wrapText(part, room, 11, 1));
  lines.forEach((line, i) => {
    drawText(frame.body, frame.right - room, y + 4 + (i - (lines.length - 1) / 2) * 14, line, { bold: i === 0 });
  });
}
