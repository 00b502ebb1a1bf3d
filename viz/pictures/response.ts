import { type ScaleLinear, scaleLinear } from "d3";
import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Estimate, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawText,
  emptyChart,
  isolated,
  type Quantity,
  readable,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawLevelInterval } from "../marks/index.ts";
import { estimateWords, observationNoun, observationsWords, quoted, studyFormat } from "../words/index.ts";
import { type ChartTable, endCells, endColumns, type PartialEnds, textColumn } from "./chartTable.ts";
import { stackedRows } from "./stackedRows.ts";

export interface ResponseRow {
  name: string;
  /** Null: no simulated day gave a value. */
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
  /** Below the picture, each in up to four lines. */
  footnotes?: readonly string[];
}

const TEXT_GUTTER = 178;
const MAX_LINES = 3;
/** Pixels that a dot with its interval takes. */
export const DOT = 12;

/** One response over the variants: dot and interval, the base's interval as a band, figures at the right. */
export function responseChart(columns: ResponseColumns, context: ChartContext): SVGSVGElement {
  const known = columns.rows.filter((row) => row.mean !== null);
  if (known.length === 0) return emptyChart(columns, "No simulated day gave a value for this result.", context);
  const frame = chartFrame(columns, context);
  if (frame.narrow) return narrowResponse(frame, columns);
  const names = nameGutter(columns.rows);
  const figures = figureGutter(columns.rows, TEXT_GUTTER);
  const value = scaleLinear()
    .domain(paddedDomain(columns.rows))
    .range([frame.left + names, frame.right - figures]);
  const top = frame.top + 14;
  const row = rowHeight(columns.rows, names - 12);
  const bottom = top + columns.rows.length * row;
  drawBaseBand(frame, columns, value, top, bottom);
  const room = frame.right - frame.left - Math.abs(names - figures);
  const end = drawBottomAxis(frame, value, columns.quantity, { top, y: bottom, labelRoom: room });
  columns.rows.forEach((entry, index) => {
    const y = top + (index + 0.5) * row;
    drawNames(frame, entry.name, y, names - 12);
    drawRow(frame, entry, value, y);
    drawFigures(frame, entry.text, y, figures - 12);
  });
  return frame.finish(end, ...(columns.footnotes ?? []));
}

/** The same with the words of each row above it. */
function narrowResponse(frame: ChartFrame, columns: ResponseColumns): SVGSVGElement {
  const top = frame.top + 14;
  const rows = stackedRows(frame, columns.rows, top, DOT);
  const value = scaleLinear().domain(paddedDomain(columns.rows)).range([rows.left, rows.right]);
  drawBaseBand(frame, columns, value, top, rows.bottom);
  const end = drawBottomAxis(frame, value, columns.quantity, { top, y: rows.bottom });
  rows.drawWords();
  columns.rows.forEach((entry, index) => {
    drawRow(frame, entry, value, rows.middles[index]!);
  });
  return frame.finish(end, ...(columns.footnotes ?? []));
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
  value: ScaleLinear<number, number>,
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
  const [left, right] = value.range() as [number, number];
  const middle = Math.min(Math.max(from + width / 2, left + 56), right - 56);
  drawText(frame.body, middle, top - 5, "today's plan", { anchor: "middle", fill: frame.colour("muted") });
}

function drawRow(frame: ChartFrame, row: ResponseRow, value: (v: number) => number, y: number): void {
  const group = readable(frame.body, `${row.name}: ${row.text}`);
  if (row.mean !== null) {
    const style = { stroke: frame.colour("line"), paper: frame.colour("paper"), filled: true };
    drawLevelInterval(group, value, { ...row, mean: row.mean }, y, style);
  }
}

const NAME_GUTTER = 190;
const WIDE_NAME_GUTTER = 232;
const WIDEST_FIGURES = 250;

/** Pixels for the names at the left: more of them where some name would take three lines. */
export function nameGutter(rows: readonly { name: string }[]): number {
  const lines = Math.max(...rows.map(({ name }) => wrapText(name, NAME_GUTTER - 12, 12, MAX_LINES).length));
  return lines < MAX_LINES ? NAME_GUTTER : WIDE_NAME_GUTTER;
}

/** Pixels for the figures at the right: `least`, or what the longest line of them takes, up to 250. */
export function figureGutter(rows: readonly { text: string }[], least: number): number {
  const widths = rows.flatMap(({ text }) => text.split("\n").map((line, i) => textWidth(line, 11, i === 0)));
  return Math.min(WIDEST_FIGURES, Math.max(least, Math.ceil(Math.max(...widths)) + 14));
}

/** A variant's name at the left, up to three lines around `y`. */
export function drawNames(frame: ChartFrame, name: string, y: number, room: number): void {
  const lines = wrapText(name, room, 12, MAX_LINES);
  lines.forEach((line, i) => {
    drawText(frame.body, frame.left, y + 4 + (i - (lines.length - 1) / 2) * 15, line, { size: 12 });
  });
}

/** Height of every row: enough for the longest of the names. */
export function rowHeight(rows: readonly { name: string }[], room: number): number {
  const most = Math.max(...rows.map((row) => wrapText(row.name, room, 12, MAX_LINES).length));
  return most === 1 ? 36 : 10 + most * 15;
}

/** Figures at the right, up to two lines around `y`. */
export function drawFigures(frame: ChartFrame, text: string, y: number, room: number): void {
  const lines = text.split("\n").flatMap((part, i) => wrapText(part, room, 11, 1, i === 0));
  lines.forEach((line, i) => {
    drawText(frame.body, frame.right - room, y + 4 + (i - (lines.length - 1) / 2) * 14, line, { bold: i === 0 });
  });
}

/** One response over the variants, in the order of the study, the base first. */
export function responseView(results: StudyResults, info: ResponseInfo): ResponseColumns {
  const format = studyFormat(results, info);
  const { confidence, replications } = results.study;
  const rows = results.variants.map((variant) => {
    const estimate = variant.estimates[info.key];
    const words = estimateWords(estimate, format, confidence);
    return {
      name: isolated(variant.name),
      ...endsOf(estimate),
      text: words.interval === "" ? words.mean : `${words.mean}\n${words.interval}`,
    };
  });
  const several =
    replications > 1
      ? `Mean over ${observationsWords(results)} with its ${formatConfidence(confidence)} interval`
      : "One day, no interval";
  return {
    title: isolated(info.label),
    caption: "Band: today's plan. A variant whose bar lies clear of it is likely to differ",
    subtitle: `${several}${wish(info)}${meaningOf(info)}`,
    description: describeVariants(results, info),
    quantity: format.quantity,
    rows,
    base: 0,
  };
}

function wish(info: ResponseInfo): string {
  return info.better === null
    ? ""
    : info.better === "more"
      ? ". More is better"
      : `. ${info.format === "clock" ? "Earlier" : "Less"} is better`;
}

export function meaningOf({ meaning }: ResponseInfo): string {
  return meaning === undefined ? "" : `. ${isolated(meaning)}`;
}

export function endsOf(estimate: Estimate | undefined): PartialEnds {
  if (!estimate || estimate.n === 0) return { mean: null, low: null, high: null };
  return { mean: estimate.mean, low: estimate.low, high: estimate.high };
}

/** Up to so many variants are told one by one; beyond it base, highest and lowest stand for all. */
export const MAX_TOLD = 6;

/** One response of the variants in words, for those who cannot see the picture. */
export function describeVariants(results: StudyResults, info: ResponseInfo): string {
  const format = studyFormat(results, info);
  const { confidence } = results.study;
  const noun = observationNoun(results);
  const tell = (variant: VariantResults) =>
    `${quoted(variant.name)}: ${estimateWords(variant.estimates[info.key], format, confidence, noun).phrase}.`;
  const { variants } = results;
  if (variants.length <= MAX_TOLD) return variants.map(tell).join(" ");
  const known = variants.filter((variant) => (variant.estimates[info.key]?.n ?? 0) > 0);
  const sorted = [...known].sort((a, b) => a.estimates[info.key]!.mean - b.estimates[info.key]!.mean);
  if (sorted.length === 0) return "No variant has a value.";
  return `Today's plan, ${tell(variants[0]!)} Lowest of ${known.length} variants ${tell(sorted[0]!)} Highest ${tell(sorted.at(-1)!)}`;
}

export function responseTable({ quantity, rows }: ResponseColumns): ChartTable {
  return {
    columns: [textColumn("variant"), ...endColumns(quantity)],
    rows: rows.map(({ name, ...ends }) => [name, ...endCells(quantity, ends)]),
  };
}
