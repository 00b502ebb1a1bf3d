import { line, scaleLinear } from "d3";
import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Factor, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawLeftAxis,
  drawText,
  emptyChart,
  isolated,
  LINE_HEIGHT,
  type Quantity,
  SERIES,
  spreadLabels,
  wrapText,
} from "../frame/index.ts";
import { drawLineKey, drawUprightInterval, type Ends } from "../marks/index.ts";
import { periodNoun, studyFormat } from "../words/index.ts";
import { type ChartTable, endCells, endColumns, textColumn } from "./chartTable.ts";
import { describeVariants, endsOf, paddedDomain } from "./response.ts";

export interface CurvePoint extends Ends {
  x: number;
}

export interface CurveColumns extends ChartWords {
  quantity: Quantity;
  /** Name of the factor along x with its unit, and its levels as the study wrote them. */
  xLabel: string;
  xLevels: readonly { x: number; text: string }[];
  /** One line, or one per level of a second factor; points ascending in x. */
  lines: readonly { label: string; points: readonly CurvePoint[] }[];
  /** Name of the second factor, "" for a single line. */
  lineLabel: string;
}

const GUTTER = 60;

const LABEL_GUTTER = 128;

const HEIGHT = 250;

const DASHES = ["", "7 3", "2 3", "10 3 2 3", "4 2"];

type Scale = (value: number) => number;

const NUMBER = /^\s*([-+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?)\s*(.*?)\s*$/i;

/**
 * One response over one or two factors as curves; null where that makes no picture (no factor, more than two, or none
 * whose levels are three or more numbers of one unit): then the rows of `responseView` show the variants.
 */
export function curveView(results: StudyResults, info: ResponseInfo): CurveColumns | null {
  const along = alongFactor(results.factors);
  if (!along) return null;
  const { index, levels, unit } = along;
  const factor = results.factors[index]!;
  const other = results.factors.length === 2 ? 1 - index : null;
  const format = studyFormat(results, info);
  const point = (variant: VariantResults) => pointOf(variant, info.key, levels[variant.levels[index] ?? -1]);
  const curve = (label: string, variants: readonly VariantResults[]) => {
    return { label, points: variants.flatMap(point).sort((a, b) => a.x - b.x) };
  };
  const lines =
    other === null
      ? [curve("", results.variants)]
      : results.factors[other]!.levels.map((label, group) => {
          const members = results.variants.filter((variant) => variant.levels[other] === group);
          return curve(isolated(label), members);
        });
  return {
    title: `${isolated(info.label)} by ${isolated(factor.name)}`,
    caption:
      other === null
        ? "Look where the line flattens: a level beyond that point adds little"
        : "Lines far apart: the second factor matters. Lines not parallel: what one factor does depends on the other",
    subtitle: subtitle(results, other === null),
    description: describeVariants(results, info),
    quantity: format.quantity,
    xLabel: unit === "" ? isolated(factor.name) : `${isolated(factor.name)}, ${isolated(unit)}`,
    xLevels: levels.map((x, level) => ({ x, text: numberText(factor.levels[level]!) })),
    lines: lines.filter((line) => line.points.length > 0),
    lineLabel: other === null ? "" : isolated(results.factors[other]!.name),
  };
}

function subtitle(results: StudyResults, single: boolean): string {
  const { replications, confidence } = results.study;
  if (replications < 2) return `One ${periodNoun(results)} each, no interval`;
  return `Mean over ${replications} ${periodNoun(results)}s, ${single ? "bars and band" : "bars"}: ${formatConfidence(confidence)} interval`;
}

/** The first factor whose levels are at least three different numbers of one unit, out of one or two factors. */
function alongFactor(factors: readonly Factor[]): { index: number; levels: number[]; unit: string } | null {
  if (factors.length === 0 || factors.length > 2) return null;
  for (const [index, factor] of factors.entries()) {
    const parts = factor.levels.map((level) => NUMBER.exec(level));
    if (parts.length < 3 || parts.some((part) => part === null)) continue;
    const units = new Set(parts.map((part) => part![2]));
    const levels = parts.map((part) => Number(part![1]));
    if (units.size === 1 && new Set(levels).size === levels.length) return { index, levels, unit: parts[0]![2]! };
  }
  return null;
}

function numberText(level: string): string {
  return NUMBER.exec(level)?.[1] ?? level;
}

function pointOf(variant: VariantResults, key: string, x: number | undefined): CurvePoint[] {
  const { mean, low, high } = endsOf(variant.estimates[key]);
  return x === undefined || mean === null ? [] : [{ x, mean, low, high }];
}

/** One response over a numeric factor: line with its interval; with a second factor one labelled line per level. */
export function curveChart(columns: CurveColumns, context: ChartContext): SVGSVGElement {
  const points = columns.lines.flatMap((curve) => curve.points);
  if (points.length === 0) return emptyChart(columns, "No simulated day gave a value for this result.", context);
  const frame = chartFrame(columns, context);
  const top = (frame.narrow ? drawNarrowLabels(frame, columns) : frame.top) + 22;
  const floor = top + HEIGHT;
  const X = columns.xLevels.map((level) => level.x);
  const x = scaleLinear()
    .domain([Math.min(...X), Math.max(...X)])
    .range([frame.left + GUTTER + 18, plotRight(frame, columns) - 14]);
  const y = scaleLinear().domain(paddedDomain(points)).range([floor, top]);
  const left = frame.left + GUTTER;
  drawLeftAxis(frame, y, columns.quantity, { left, right: plotRight(frame, columns), labelY: top - 12 });
  drawLevelAxis(frame, columns, x, left, floor);
  const spread = columns.lines.length > 1 ? Math.min(6, 18 / columns.lines.length) : 0;
  columns.lines.forEach((curve, index) => {
    const shift = (index - (columns.lines.length - 1) / 2) * spread;
    if (columns.lines.length === 1) drawBand(frame, curve.points, x, y);
    drawCurve(frame, curve.points, (value) => x(value) + shift, y, index);
  });
  if (!frame.narrow) drawLineLabels(frame, columns, y, top, floor);
  return frame.finish(floor + 38);
}

/** A narrow picture names its lines above the plot; returns the lower edge. */
function drawNarrowLabels(frame: ChartFrame, { lines, lineLabel }: CurveColumns): number {
  if (lines.length < 2) return frame.top;
  const samples = lines.map(({ label }, index) => ({
    ...{ name: `${lineLabel}: ${label}`, width: 2 },
    ...{ stroke: frame.colour(SERIES[index % SERIES.length]!), dash: DASHES[index % DASHES.length]! },
  }));
  return drawLineKey(frame, samples, frame.top - LINE_HEIGHT) + LINE_HEIGHT;
}

function drawLevelAxis(
  frame: ChartFrame,
  columns: CurveColumns,
  x: (v: number) => number,
  left: number,
  floor: number,
): void {
  const right = plotRight(frame, columns);
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  let occupied = Number.NEGATIVE_INFINITY;
  for (const level of columns.xLevels) {
    const at = x(level.x);
    frame.body
      .append("path")
      .attr("d", `M${at.toFixed(1)},${floor}v4`)
      .attr("stroke", frame.colour("rule"));
    const half = level.text.length * 3.6;
    if (at - half < occupied + 6) continue;
    drawText(frame.body, at, floor + 17, level.text, { anchor: "middle", fill: frame.colour("muted") });
    occupied = at + half;
  }
  const [label = ""] = wrapText(columns.xLabel, right - left, 11, 1);
  drawText(frame.body, (left + right) / 2, floor + 34, label, {
    anchor: "middle",
    fill: frame.colour("muted"),
  });
}

function drawBand(frame: ChartFrame, points: readonly CurvePoint[], x: Scale, y: Scale): void {
  const ring = [
    ...points.map((point) => [x(point.x), y(point.high ?? point.mean)] as [number, number]),
    ...[...points].reverse().map((point) => [x(point.x), y(point.low ?? point.mean)] as [number, number]),
  ];
  const band = frame.body.append("path").attr("d", `${line().digits(1)(ring)}Z`);
  band.attr("fill", frame.colour("range")).attr("fill-opacity", 0.55);
}

function drawCurve(frame: ChartFrame, points: readonly CurvePoint[], x: Scale, y: Scale, index: number): void {
  const colour = frame.colour(SERIES[index % SERIES.length]!);
  const path = line<CurvePoint>(
    (point) => x(point.x),
    (point) => y(point.mean),
  ).digits(1)([...points]);
  const stroke = frame.body
    .append("path")
    .attr("d", path)
    .attr("fill", "none")
    .attr("stroke", colour)
    .attr("stroke-width", 2);
  if (DASHES[index % DASHES.length]) stroke.attr("stroke-dasharray", DASHES[index % DASHES.length]!);
  const style = { stroke: colour, paper: frame.colour("paper"), filled: index % 2 === 0 };
  for (const point of points) drawUprightInterval(frame.body, x(point.x), y, point, style);
}

function drawLineLabels(
  frame: ChartFrame,
  columns: CurveColumns,
  y: (v: number) => number,
  top: number,
  floor: number,
): void {
  if (columns.lines.length < 2) return;
  const left = frame.right - LABEL_GUTTER + 8;
  const names = wrapText(`${columns.lineLabel}:`, LABEL_GUTTER - 8, 11, 2);
  names.forEach((name, i) => {
    drawText(frame.body, left, top - 12 + i * 14, name, { fill: frame.colour("muted") });
  });
  const wishes = columns.lines.map((curve) => y(curve.points.at(-1)?.mean ?? 0));
  const places = spreadLabels(wishes, 16, top + 14 * names.length, floor);
  columns.lines.forEach((curve, index) => {
    const colour = frame.colour(SERIES[index % SERIES.length]!);
    const [text = ""] = wrapText(curve.label, LABEL_GUTTER - 10, 12, 1, true);
    drawText(frame.body, left, places[index]! + 4, text, { bold: true, size: 12, fill: colour });
  });
}

/** Right end of the plot: several lines need room for their names. */
function plotRight(frame: ChartFrame, columns: CurveColumns): number {
  return frame.right - (columns.lines.length > 1 && !frame.narrow ? LABEL_GUTTER : 12);
}

export function curveTable({ quantity, lines, lineLabel, xLabel, xLevels }: CurveColumns): ChartTable {
  const level = (x: number) => xLevels.find((each) => each.x === x)?.text ?? x;
  return {
    columns: [...(lineLabel === "" ? [] : [textColumn(lineLabel)]), textColumn(xLabel), ...endColumns(quantity)],
    rows: lines.flatMap(({ label, points }) =>
      points.map(({ x, ...ends }) => [...(lineLabel === "" ? [] : [label]), level(x), ...endCells(quantity, ends)]),
    ),
  };
}
