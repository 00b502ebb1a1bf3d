import { scaleLinear } from "d3";
import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults, Why } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawText,
  emptyChart,
  FILLS,
  isolated,
  readable,
  type Texture,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawKey } from "../marks/index.ts";
import {
  CAUSE_KINDS,
  causeWords,
  isSingleDay,
  observationNoun,
  observationsOf,
  quoted,
  shareEstimate,
  spanEstimate,
} from "../words/index.ts";
import { type ChartTable, secondsColumn, textColumn } from "./chartTable.ts";
import { drawFigures, figureGutter } from "./response.ts";
import { stackedRows } from "./stackedRows.ts";

/** What one cause at one stage added to the day. */
export interface BindingRow {
  stage: string;
  cause: string;
  /** Index into the kinds: a kind of cause has the same look in every picture. */
  kind: number;
  seconds: number;
  /** Interval over days; null for a single day. */
  low: number | null;
  high: number | null;
  /** The time and its share of the day in words. */
  text: string;
}

export interface BindingColumns extends ChartWords {
  /** Names of the kinds of causes; the key shows those that a row has. */
  kinds: readonly string[];
  /** The largest first. */
  rows: readonly BindingRow[];
  footnote: string;
}

const GUTTER = 210;

const WIDEST_GUTTER = 250;

const TEXT_GUTTER = 176;

const ROW = 30;

const BAR = 18;

const QUANTITY = { kind: "duration", label: "time waited for it" } as const;

const TEXTURES: readonly Texture[] = ["plain", "rising", "dots", "level", "cross", "upright", "falling"];

const MAX_ROWS = 12;

/** What the end of a variant's work was owed to, the longest first; what is left out stands below. */
export function bindingView(results: StudyResults, variant: VariantResults, why: Why): BindingColumns {
  const told = why.parts.slice(0, MAX_ROWS);
  const rest = why.total.mean - told.reduce((sum, { seconds }) => sum + seconds.mean, 0);
  return {
    title: "What the line waited for until the end of work",
    caption: "The longer the bar, the longer the line waited for it. The texture says why",
    subtitle: `${whyScope(results, variant)}. All together: ${spanEstimate(why.total)}, from the day's start to the end of work`,
    description: describe(why),
    kinds: CAUSE_KINDS,
    rows: told.map((part) => {
      const { where, what, kind } = causeWords(part);
      const { mean, low, high } = part.seconds;
      return {
        stage: where,
        cause: what,
        kind,
        seconds: mean,
        low,
        high,
        text: `${spanEstimate(part.seconds)}\n${shareWords(mean / why.total.mean)} of the time`,
      };
    }),
    footnote:
      rest > 0.0005 * why.total.mean
        ? `All else together: ${spanEstimate({ ...why.total, mean: rest, low: null, high: null })}, ${shareWords(rest / why.total.mean)} of the time.`
        : "",
  };
}

/** Whole per cent: a share of a mean that is known to a minute or so is known no better. */
function shareWords(share: number): string {
  return share < 0.01 ? "under 1 %" : `${formatDecimals(100 * share, 0)} %`;
}

/** "“base”, mean over 25 days with its 95 % interval" or "one day, no interval". */
export function whyScope(results: StudyResults, variant: VariantResults): string {
  if (isSingleDay(results)) return "One day, no interval";
  const { confidence } = results.study;
  return `${quoted(variant.name)}, mean over ${observationsOf(results, variant)} ${observationNoun(results)} with its ${formatConfidence(confidence)} interval`;
}

function describe({ stages, parts }: Why): string {
  const shares = stages.slice(0, 4).map(({ stage, share }) => `${isolated(stage)} ${shareEstimate(share)}`);
  const first = parts[0];
  if (first === undefined) return "Nothing held the day up.";
  const { where, what } = causeWords(first);
  return `The line waited longest for ${where}, ${what}: ${spanEstimate(first.seconds)}. By stage, all causes together: ${shares.join(", ")}.`;
}

/** What the day's length is made of: one bar for each stage and cause, the cause told by texture and by name. */
export function bindingChart(columns: BindingColumns, context: ChartContext): SVGSVGElement {
  if (columns.rows.length === 0) return emptyChart(columns, "Nothing held the day up.", context);
  const frame = chartFrame(columns, context);
  const found = [...new Set(columns.rows.map(({ kind }) => kind))].sort((a, b) => a - b);
  const fills = new Map(found.map((kind) => [kind, kindFill(frame, kind)]));
  const key = found.map((kind) => ({ name: columns.kinds[kind] ?? "", fill: fills.get(kind)! }));
  const top = drawKey(frame, key, frame.top + 4) + 18;
  if (frame.narrow) return narrowBinding(frame, columns, fills, top);
  const bottom = top + columns.rows.length * ROW;
  const gutter = causeGutter(columns.rows);
  const figures = figureGutter(columns.rows, TEXT_GUTTER);
  const value = scaleLinear()
    .domain(domainOf(columns))
    .range([frame.left + gutter, frame.right - figures]);
  const end = drawBottomAxis(frame, value, QUANTITY, { top, y: bottom });
  columns.rows.forEach((row, index) => {
    drawCause(frame, row, gutter - 10, top + index * ROW);
    drawBar(frame, row, fills.get(row.kind)!, value, top + (index + 0.5) * ROW);
    drawFigures(frame, row.text, top + (index + 0.5) * ROW, figures - 12);
  });
  return frame.finish(end, columns.footnote);
}

function domainOf({ rows }: BindingColumns): [number, number] {
  return [0, Math.max(...rows.map((row) => row.high ?? row.seconds)) * 1.02 || 1];
}

/** The same with the words of each row above it. */
function narrowBinding(
  frame: ChartFrame,
  columns: BindingColumns,
  fills: ReadonlyMap<number, string>,
  top: number,
): SVGSVGElement {
  const words = columns.rows.map(({ stage, cause, text }) => {
    return { name: stage, detail: cause, text: text.replace("\n", ", ") };
  });
  const rows = stackedRows(frame, words, top - 8, BAR);
  const value = scaleLinear().domain(domainOf(columns)).range([frame.left, rows.right]);
  const end = drawBottomAxis(frame, value, QUANTITY, { top: top - 4, y: rows.bottom });
  rows.drawWords();
  columns.rows.forEach((row, index) => {
    drawBar(frame, row, fills.get(row.kind)!, value, rows.middles[index]!);
  });
  return frame.finish(end, columns.footnote);
}

/** Six fills and seven textures: no two of the first 42 kinds look the same. */
function kindFill(frame: ChartFrame, kind: number): string {
  const colour = frame.colour(FILLS[kind % FILLS.length]!);
  return textureFill(
    frame.defs,
    frame.id(`kind-${kind}`),
    TEXTURES[kind % TEXTURES.length]!,
    colour,
    frame.colour("ink"),
  );
}

/** Pixels for stage and cause at the left: enough for the longest, up to 250. */
function causeGutter(rows: readonly BindingRow[]): number {
  const widths = rows.flatMap(({ stage, cause }) => [textWidth(stage, 11, true), textWidth(cause, 11)]);
  return Math.min(WIDEST_GUTTER, Math.max(GUTTER, Math.ceil(Math.max(...widths)) + 12));
}

function drawCause(frame: ChartFrame, row: BindingRow, room: number, top: number): void {
  const [name = ""] = wrapText(row.stage, room, 11, 1, true);
  const [cause = ""] = wrapText(row.cause, room, 11, 1);
  drawText(frame.body, frame.left, top + 13, name, { bold: true });
  drawText(frame.body, frame.left, top + 26, cause, { fill: frame.colour("muted") });
}

function drawBar(frame: ChartFrame, row: BindingRow, fill: string, value: (v: number) => number, y: number): void {
  const group = readable(frame.body, `${row.stage}, ${row.cause}: ${row.text}`);
  const bar = group
    .append("rect")
    .attr("x", value(0))
    .attr("y", y - BAR / 2)
    .attr("height", BAR);
  bar.attr("width", Math.max(1, value(row.seconds) - value(0)).toFixed(1)).attr("fill", fill);
  bar.attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
  if (row.low !== null && row.high !== null) {
    const [from, to] = [value(Math.max(0, row.low)).toFixed(1), value(row.high).toFixed(1)];
    const whisker = group.append("path").attr("d", `M${from},${y - 4}v8M${from},${y}H${to}M${to},${y - 4}v8`);
    whisker.attr("fill", "none").attr("stroke", frame.colour("ink")).attr("stroke-width", 1.4);
  }
}

export function bindingTable(columns: BindingColumns): ChartTable {
  return {
    columns: [
      textColumn("stage"),
      textColumn("cause"),
      secondsColumn("time"),
      secondsColumn("low"),
      secondsColumn("high"),
    ],
    rows: columns.rows.map((row) => [row.stage, row.cause, row.seconds, row.low, row.high]),
  };
}
