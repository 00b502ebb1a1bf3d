import { type ScaleLinear, scaleLinear } from "d3";
import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { OptionsResult, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawText,
  emptyChart,
  isolated,
  LINE_HEIGHT,
  type Quantity,
  readable,
  textWidth,
} from "../frame/index.ts";
import { drawLevelInterval } from "../marks/index.ts";
import { differenceEnds, differenceIn, differenceWords, periodNoun, quoted, studyFormat } from "../words/index.ts";
import { type ChartTable, endCells, endColumns, textColumn } from "./chartTable.ts";
import {
  DOT,
  drawFigures,
  drawNames,
  endsOf,
  figureGutter,
  MAX_TOLD,
  meaningOf,
  nameGutter,
  paddedDomain,
  type ResponseRow,
  rowHeight,
} from "./response.ts";
import { stackedRows } from "./stackedRows.ts";

export interface DifferenceRow extends ResponseRow {
  /** The interval leaves 0 out. */
  shown: boolean;
}

export interface DifferenceColumns extends ChartWords {
  quantity: Quantity;
  rows: readonly DifferenceRow[];
  /** Words for the two sides of zero, left and right. */
  sides: readonly [string, string];
  /** Said where no row has a value. Default: nothing to compare with the base. */
  nothing?: string;
  /** Below the picture, each in up to four lines. */
  footnotes?: readonly string[];
}

const TEXT_GUTTER = 188;

/** Paired difference of each variant to the base: filled dot where it is shown, open dot where it is not, both said in words. */
export function differenceChart(columns: DifferenceColumns, context: ChartContext): SVGSVGElement {
  const known = columns.rows.filter((row) => row.mean !== null);
  if (known.length === 0)
    return emptyChart(columns, columns.nothing ?? "There is nothing to compare with today's plan.", context);
  const frame = chartFrame(columns, context);
  if (frame.narrow) return narrowDifference(frame, columns);
  const names = nameGutter(columns.rows);
  const figures = figureGutter(columns.rows, TEXT_GUTTER);
  const value = scaleLinear()
    .domain(domainOf(columns))
    .range([frame.left + names, frame.right - figures]);
  const top = frame.top + 16;
  const row = rowHeight(columns.rows, names - 12);
  const bottom = top + columns.rows.length * row;
  const room = frame.right - frame.left - Math.abs(names - figures);
  const end = drawBottomAxis(frame, value, columns.quantity, { top, y: bottom, labelRoom: room });
  drawZero(frame, columns.sides, value, top, bottom);
  columns.rows.forEach((entry, index) => {
    const y = top + (index + 0.5) * row;
    drawNames(frame, entry.name, y, names - 12);
    drawRow(frame, entry, value, y);
    drawFigures(frame, entry.text, y, figures - 12);
  });
  return frame.finish(end, ...(columns.footnotes ?? []));
}

/** Room for every interval and for 0. */
function domainOf({ rows }: DifferenceColumns): [number, number] {
  return paddedDomain([...rows, { mean: 0, low: null, high: null }]);
}

/** The same with the words of each row above it. */
function narrowDifference(frame: ChartFrame, columns: DifferenceColumns): SVGSVGElement {
  const top = frame.top + 20 + (sidesFit(frame, columns.sides) ? 0 : LINE_HEIGHT);
  const rows = stackedRows(frame, columns.rows, top, DOT);
  const value = scaleLinear().domain(domainOf(columns)).range([rows.left, rows.right]);
  const end = drawBottomAxis(frame, value, columns.quantity, { top, y: rows.bottom });
  drawZero(frame, columns.sides, value, top, rows.bottom);
  rows.drawWords();
  columns.rows.forEach((entry, index) => {
    drawRow(frame, entry, value, rows.middles[index]!);
  });
  return frame.finish(end, ...(columns.footnotes ?? []));
}

/** Whether the words for the two sides of zero stand on one line of a narrow picture. */
function sidesFit(frame: ChartFrame, sides: readonly [string, string]): boolean {
  return textWidth(`← ${sides[0]}    ${sides[1]} →`, 11) < frame.right - frame.left;
}

function drawZero(
  frame: ChartFrame,
  sides: readonly [string, string],
  value: ScaleLinear<number, number>,
  top: number,
  bottom: number,
): void {
  const [left, right] = value.range() as [number, number];
  const line = frame.body.append("path").attr("d", `M${value(0).toFixed(1)},${top - 2}V${bottom}`);
  line.attr("stroke", frame.colour("ink")).attr("stroke-width", 1.4);
  const style = { fill: frame.colour("muted") };
  const [from, to] = frame.narrow ? [frame.left, frame.right] : [left, right];
  const above = frame.narrow && !sidesFit(frame, sides) ? LINE_HEIGHT : 0;
  drawText(frame.body, from, top - 6 - above, `← ${sides[0]}`, style);
  drawText(frame.body, to, top - 6, `${sides[1]} →`, { ...style, anchor: "end" });
}

function drawRow(frame: ChartFrame, row: DifferenceRow, value: (v: number) => number, y: number): void {
  const group = readable(frame.body, `${row.name}: ${row.text}`);
  if (row.mean !== null) {
    const { shown } = row;
    const style = { stroke: frame.colour(shown ? "line" : "muted"), paper: frame.colour("paper"), filled: shown };
    drawLevelInterval(group, value, { ...row, mean: row.mean }, y, style);
  }
}

/** The same as differences to the base, which has no row of its own. */
export function differenceView(results: StudyResults, info: ResponseInfo): DifferenceColumns {
  const format = studyFormat(results, info);
  const { confidence } = results.study;
  const scale = (value: number | null) => (value === null ? null : value * format.differenceScale);
  const rows = results.variants.slice(1).map((variant) => {
    const difference = differenceIn(variant, info.key);
    const words = differenceWords(difference, format, confidence);
    const ends = endsOf(difference && { ...difference, ...differenceEnds(difference) });
    const text =
      words.interval === "" ? `${words.mean}\n${words.verdict}` : `${words.mean}, ${words.verdict}\n${words.interval}`;
    return {
      name: isolated(variant.name),
      mean: scale(ends.mean),
      low: scale(ends.low),
      high: scale(ends.high),
      text,
      shown: difference?.shown ?? false,
    };
  });
  const base = results.variants[0];
  const joint = results.variants.some((variant) => differenceIn(variant, info.key)?.joint);
  const interval = `${formatConfidence(confidence)} intervals${joint ? ` that allow for ${results.variants.length - 1} changes compared` : ""}`;
  return {
    title: `${isolated(info.label)}: difference to today's plan`,
    caption: "If the bar does not touch the upright line, the difference is real in this model",
    subtitle: `Against ${quoted(base?.name ?? "")}, compared on the same ${periodNoun(results)}s, ${interval}. Filled dot: a difference is shown; open dot: not shown${meaningOf(info)}`,
    description: describeDifferences(results, info),
    quantity: format.differenceQuantity,
    rows,
    sides: sidesOf(info, format.sides),
  };
}

function sidesOf(info: ResponseInfo, sides: readonly [string, string]): [string, string] {
  if (info.better === null) return [sides[0], sides[1]];
  const more = info.better === "more";
  return [`${sides[0]}: ${more ? "worse" : "better"}`, `${sides[1]}: ${more ? "better" : "worse"}`];
}

/** Differences to the base case in words, all or the two ends. */
export function describeDifferences(results: StudyResults, info: ResponseInfo): string {
  const format = studyFormat(results, info);
  const tell = (variant: VariantResults) =>
    `${quoted(variant.name)}: ${differenceWords(differenceIn(variant, info.key), format, results.study.confidence).sentence}.`;
  const variants = results.variants.slice(1);
  if (variants.length <= MAX_TOLD) return variants.map(tell).join(" ");
  const mean = (variant: VariantResults) => differenceIn(variant, info.key)?.mean ?? 0;
  const sorted = [...variants].sort((a, b) => mean(a) - mean(b));
  const shown = variants.filter((variant) => differenceIn(variant, info.key)?.shown).length;
  return `${shown} of ${variants.length} differences are shown. Lowest ${tell(sorted[0]!)} Highest ${tell(sorted.at(-1)!)}`;
}

/** What each option brings in a year beyond what it costs, in the order of the file. */
export function worthView({ options, currency, confidence }: OptionsResult): DifferenceColumns {
  const money = (value: number) => formatDecimals(Math.round(value), 0);
  const unit = isolated(currency);
  const told = options.map(({ name, worth, verdict }) => {
    const { mean, low, high } = worth.perYear;
    const ends = `${money(low)} to ${money(high)}`;
    return { name, mean, low, high, ends, shown: verdict !== "not decided", verdict };
  });
  return {
    title: "What each option brings in a year",
    caption: "Bar clear of the upright line: a gain or a loss in this model. Bar across the line: not decided",
    subtitle: `Average yearly benefit after price, service and interest; ${formatConfidence(confidence)} intervals that hold for all options at once. Filled dot: decided; open dot: not decided`,
    description: `${told.map(({ name, mean, ends, verdict }) => `${quoted(name)}: ${money(mean)} ${unit} a year (${ends}), ${verdict}`).join("; ")}.`,
    quantity: { kind: "number", label: "a year", unit },
    rows: told.map(({ name, mean, low, high, ends, shown, verdict }) => {
      return { name: isolated(name), mean, low, high, shown, text: `${money(mean)} ${unit}, ${verdict}\n${ends}` };
    }),
    sides: ["a loss", "a gain"],
  };
}

export function differenceTable({ quantity, rows }: DifferenceColumns): ChartTable {
  return {
    columns: [textColumn("variant"), ...endColumns(quantity), textColumn("difference shown")],
    rows: rows.map(({ name, shown, ...ends }) => [name, ...endCells(quantity, ends), shown ? "yes" : "no"]),
  };
}
