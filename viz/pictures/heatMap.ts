import { formatConfidence } from "../../sim/text/units/index.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawText,
  emptyChart,
  isolated,
  type Quantity,
  readable,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { estimateWords, observationsWords, type ResponseFormat, ranking, studyFormat } from "../words/index.ts";
import { type ChartTable, quantityCell, quantityUnit, textColumn } from "./chartTable.ts";
import { describeVariants } from "./response.ts";

/** What one pair of levels gave; at most one cell for each pair. */
export interface HeatMapCell {
  column: number;
  row: number;
  value: number;
  /** Half the width of its interval; null where there is none. */
  halfWidth: number | null;
  /** The mean, and below it its half-width or interval, with units where the axis does not give them. */
  text: string;
  detail: string;
  /** Everything in one line, for pointing at. */
  words: string;
  mark: "today" | "today and best" | "best" | "may be as good" | "";
}

export interface HeatMapColumns extends ChartWords {
  columnName: string;
  columnLevels: readonly string[];
  rowName: string;
  rowLevels: readonly string[];
  cells: readonly HeatMapCell[];
  /** What the values are, and in which unit. */
  quantity: Quantity;
  /** Words for the two ends of the shading, low and high value. */
  ends: readonly [string, string];
}

/** Upper left corner and width of a cell, pixels. */
interface CellPlace {
  x: number;
  y: number;
  width: number;
}

const GUTTER = 150;

const CELL = 52;

const GAP = 2;

/** Shades of the working colour that leave text on them readable on light and dark pages. */
const SHADES = [0.06, 0.16, 0.26, 0.36, 0.46, 0.56, 0.66] as const;

/** More levels than this do not fit across the picture. */
const MAX_LEVELS = 8;

/** Pixels for the words at the ends of a narrow picture's shades. */
const SHORT_END = 90;

/** One response over both factors of a study; null unless it has exactly two and variants on several levels of each. */
export function heatMapView(results: StudyResults, info: ResponseInfo): HeatMapColumns | null {
  const [across, down] = results.factors;
  if (results.factors.length !== 2 || !across || !down || results.screening !== null) return null;
  if (across.levels.length > MAX_LEVELS || across.levels.length < 2 || down.levels.length < 2) return null;
  const format = studyFormat(results, info);
  const cells = results.variants.flatMap((variant, index) => cellOf(results, info, format, variant, index));
  if (cells.length < 4) return null;
  const values = cells.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const unit = unitOfCells(info);
  return {
    title: `${isolated(info.label)}${unit === "" ? "" : `, ${unit},`} by ${isolated(across.name)} and ${isolated(down.name)}`,
    caption: "Look along a row and down a column: where the shade stops changing, more of that factor adds nothing",
    subtitle: `Mean over ${observationsWords(results)}, ± half the width of its ${formatConfidence(results.study.confidence)} interval. Dashed frame: today's plan${markWords(cells)}`,
    description: describeVariants(results, info),
    columnName: isolated(across.name),
    columnLevels: across.levels.map(isolated),
    rowName: isolated(down.name),
    rowLevels: down.levels.map(isolated),
    cells,
    quantity: format.quantity,
    ends: endWords(format, least, most),
  };
}

function cellOf(
  results: StudyResults,
  info: ResponseInfo,
  format: ResponseFormat,
  variant: VariantResults,
  index: number,
): HeatMapCell[] {
  const [column, row] = variant.levels;
  const estimate = variant.estimates[info.key];
  if (column === undefined || row === undefined || column < 0 || row < 0 || !estimate || estimate.n === 0) return [];
  const words = estimateWords(estimate, format, results.study.confidence);
  const unit = unitOfCells(info);
  const { halfWidth } = estimate;
  // The unit stands once in the title, so that cells hold nothing but figures.
  const bare = (text: string) => (unit !== "" && text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text);
  const names = `${isolated(results.factors[0]!.levels[column]!)} and ${isolated(results.factors[1]!.levels[row]!)}`;
  return [
    {
      column,
      row,
      value: estimate.mean,
      halfWidth,
      text: bare(words.mean),
      detail: halfWidth === null ? "" : `± ${bare(format.difference(halfWidth, halfWidth).replace(/^\+/, ""))}`,
      words: `${names}: ${words.phrase}`,
      mark: bestMark(results, info, index),
    },
  ];
}

/** Times of day, spans of time and shares are written with what they need in each cell. */
function unitOfCells({ format, unit }: ResponseInfo): string {
  return format === "number" ? isolated(unit) : "";
}

/** About three digits, or as many more as it takes to tell the two from each other. */
function endWords(format: ResponseFormat, least: number, most: number): [string, string] {
  const [low, high] = [format.value(least, null), format.value(most, null)];
  return low === high ? [format.value(least, most - least), format.value(most, most - least)] : [low, high];
}

/** The best by mean; others that may be the best are not told from it. None where the response cannot rank them. */
function bestMark(results: StudyResults, info: ResponseInfo, index: number): HeatMapCell["mark"] {
  const { variants } = results;
  const { key, better } = info;
  if (ranking(results, info).by !== info) return index === 0 ? "today" : "";
  // What does harm is no best, whatever it gains: the picture must not contradict the verdict beside it.
  const isHarmed = (variant: number) => results.decision != null && results.decision.rows[variant]!.harm !== null;
  const gaps = variants.map(({ againstBest }, variant) => (isHarmed(variant) ? undefined : againstBest?.[key]));
  const sign = better === "less" ? -1 : 1;
  const most = Math.max(...gaps.map((each) => (each === undefined ? Number.NEGATIVE_INFINITY : sign * each.gap)));
  const own = gaps[index];
  const best = own !== undefined && sign * own.gap === most;
  if (index === 0) return best ? "today and best" : "today";
  if (best) return "best";
  return own?.mayBeBest ? "may be as good" : "";
}

function markWords(cells: readonly HeatMapCell[]): string {
  const marks = new Set(cells.map(({ mark }) => mark));
  const best = marks.has("best") || marks.has("today and best") ? "; bold frame: the best" : "";
  return marks.has("may be as good") ? `${best}; thin frame: may be as good` : best;
}

/** One response over two factors: a cell a pair of levels, shaded by value and lettered with it; base and best are named. */
export function heatMapChart(columns: HeatMapColumns, context: ChartContext): SVGSVGElement {
  if (columns.cells.length === 0) return emptyChart(columns, "No pair of levels gave a value.", context);
  const frame = chartFrame(columns, context);
  if (frame.narrow) return narrowHeatMap(frame, columns);
  const top = drawShadeKey(frame, columns.ends) + 34;
  const left = frame.left + GUTTER;
  const width = (frame.right - left) / columns.columnLevels.length;
  drawLevels(frame, columns, left, width, top);
  const shade = shadesOf(columns);
  for (const cell of columns.cells)
    drawCell(frame, cell, { x: left + cell.column * width, y: top + cell.row * CELL, width }, shade(cell));
  return frame.finish(top + columns.rowLevels.length * CELL);
}

/** The opacity of each cell by its value. */
function shadesOf({ cells }: HeatMapColumns): (cell: HeatMapCell) => number {
  const values = cells.map(({ value }) => value);
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return ({ value }) => {
    const share = high > low ? (value - low) / (high - low) : 0.5;
    return SHADES[Math.min(SHADES.length - 1, Math.floor(share * SHADES.length))]!;
  };
}

/** The cells of each row below its level, one to a line: side by side there is no room for their figures. */
function narrowHeatMap(frame: ChartFrame, columns: HeatMapColumns): SVGSVGElement {
  const shade = shadesOf(columns);
  const room = frame.right - frame.left;
  let y = drawShadeKey(frame, columns.ends) + 6;
  columns.rowLevels.forEach((level, row) => {
    y += 6;
    for (const line of wrapText(`${columns.rowName}: ${level}`, room, 12, 4, true)) {
      y += 16;
      drawText(frame.body, frame.left, y, line, { size: 12, bold: true });
    }
    y += 8;
    for (const cell of columns.cells.filter((each) => each.row === row))
      y = drawNarrowCell(frame, cell, columns.columnLevels[cell.column]!, { y, opacity: shade(cell) });
  });
  const across = wrapText(`The lines of each block: ${columns.columnName}`, room, 11, 4);
  for (const line of across) {
    y += 14;
    drawText(frame.body, frame.left, y, line, { fill: frame.colour("muted") });
  }
  return frame.finish(y);
}

/** One cell over the whole width: its level at the left, its figures behind; returns the lower edge. */
function drawNarrowCell(
  frame: ChartFrame,
  cell: HeatMapCell,
  level: string,
  { y, opacity }: { y: number; opacity: number },
): number {
  const group = readable(frame.body, cell.words);
  const room = frame.right - frame.left - 12;
  const rest = [cell.detail, cell.mark].filter((words) => words !== "").join(", ");
  const one = `${level}:  ${cell.text}  ${rest}`;
  const lines =
    textWidth(one, 12, true) <= room
      ? [one]
      : [`${level}:  ${cell.text}`, rest].flatMap((words) => (words === "" ? [] : wrapText(words, room, 11, 2, true)));
  const height = lines.length * 15 + 8;
  const box = group.append("rect").attr("x", frame.left).attr("y", y.toFixed(1));
  box.attr("width", frame.right - frame.left).attr("height", height);
  const marked = cell.mark !== "";
  box.attr("fill", frame.colour("working")).attr("fill-opacity", opacity);
  box.attr("stroke", frame.colour(marked ? "ink" : "rule")).attr("stroke-width", marked ? 1.5 : 0.5);
  if (cell.mark.startsWith("today")) box.attr("stroke-dasharray", "5 3");
  lines.forEach((line, i) => {
    drawText(group, frame.left + 6, y + 15 + i * 15, line, { bold: marked });
  });
  return y + height + GAP;
}

function drawShadeKey(frame: ChartFrame, [low, high]: readonly [string, string]): number {
  const y = frame.top + 6;
  const left = frame.narrow ? frame.left : frame.left + GUTTER;
  const [name = ""] = wrapText(low, frame.narrow ? SHORT_END : 220, 11, 1);
  drawText(frame.body, left, y + 10, name, { fill: frame.colour("muted") });
  const from = left + Math.ceil(textWidth(name, 11)) + 10;
  SHADES.forEach((opacity, shade) => {
    const sample = frame.body
      .append("rect")
      .attr("x", from + shade * 16)
      .attr("y", y);
    sample.attr("width", 16).attr("height", 12).attr("fill", frame.colour("working")).attr("fill-opacity", opacity);
    sample.attr("stroke", frame.colour("rule")).attr("stroke-width", 0.5);
  });
  const [most = ""] = wrapText(high, frame.narrow ? SHORT_END : 220, 11, 1);
  drawText(frame.body, from + SHADES.length * 16 + 8, y + 10, most, { fill: frame.colour("muted") });
  return y + 12;
}

function drawLevels(frame: ChartFrame, columns: HeatMapColumns, left: number, width: number, top: number): void {
  const style = { fill: frame.colour("muted") };
  const [across = ""] = wrapText(`${columns.columnName} →`, frame.right - left, 11, 1);
  drawText(frame.body, left, top - 20, across, style);
  wrapText(`↓ ${columns.rowName}`, GUTTER - 12, 11, 2).forEach((line, i) => {
    drawText(frame.body, frame.left, top - 20 + i * 14, line, style);
  });
  columns.columnLevels.forEach((level, index) => {
    const [line = ""] = wrapText(level, width - 4, 12, 1, true);
    const at = left + (index + 0.5) * width;
    drawText(frame.body, at, top - 5, line, { anchor: "middle", size: 12, bold: true });
  });
  columns.rowLevels.forEach((level, index) => {
    const lines = wrapText(level, GUTTER - 16, 12, 2, true);
    lines.forEach((line, i) => {
      const y = top + (index + 0.5) * CELL + 4 + (i - (lines.length - 1) / 2) * 14;
      drawText(frame.body, left - 8, y, line, { anchor: "end", size: 12, bold: true });
    });
  });
}

function drawCell(frame: ChartFrame, cell: HeatMapCell, place: CellPlace, opacity: number): void {
  const { x, y, width } = place;
  const group = readable(frame.body, cell.words);
  const marked = cell.mark !== "";
  const inset = marked ? 1.5 : 0;
  const box = group
    .append("rect")
    .attr("x", (x + GAP / 2 + inset).toFixed(1))
    .attr("y", y + GAP / 2 + inset);
  box.attr("width", (width - GAP - 2 * inset).toFixed(1)).attr("height", CELL - GAP - 2 * inset);
  box.attr("fill", frame.colour("working")).attr("fill-opacity", opacity);
  box.attr("stroke", frame.colour(marked ? "ink" : "rule")).attr("stroke-width", marked ? 2 : 0.5);
  if (cell.mark.startsWith("today")) box.attr("stroke-dasharray", "5 3");
  if (cell.mark === "may be as good") box.attr("stroke-width", 1.2);
  const middle = x + width / 2;
  const lines = [cell.text, cell.detail, cell.mark].filter((line) => line !== "");
  const first = y + CELL / 2 + 4 - (lines.length - 1) * 7;
  lines.forEach((line, i) => {
    const [fitting = ""] = wrapText(line, width - 8, i === 0 ? 12 : 11, 1, i === 0);
    const bold = line === cell.text;
    drawText(group, middle, first + i * 14, fitting, { anchor: "middle", bold, size: bold ? 12 : 11 });
  });
}

export function heatMapTable(columns: HeatMapColumns): ChartTable {
  const { quantity } = columns;
  // About a time of day there is a span of time.
  const about = quantity.kind === "clock" ? ({ kind: "duration", label: quantity.label } as const) : quantity;
  return {
    columns: [
      textColumn(columns.columnName),
      textColumn(columns.rowName),
      { name: "mean", unit: quantityUnit(quantity) },
      { name: "half of its interval", unit: quantityUnit(about) },
      textColumn("mark"),
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
