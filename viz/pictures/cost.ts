import { line, type ScaleLinear, scaleLinear } from "d3";
import { formatConfidence } from "../../sim/text/units/index.ts";
import type { Estimate, Improvement, ResponseInfo, StudyResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawLeftAxis,
  drawText,
  emptyChart,
  isolated,
  type Quantity,
  readable,
  spreadLabels,
  wrapText,
} from "../frame/index.ts";
import { drawLevelInterval, drawUprightInterval, type Ends } from "../marks/index.ts";
import {
  estimateWords,
  goalFormat,
  observationNoun,
  observationsWords,
  quoted,
  studyFormat,
  usesWords,
} from "../words/index.ts";
import { type ChartTable, endCells, endColumns, textColumn } from "./chartTable.ts";
import { drawNumbered } from "./numberedPoints.ts";
import { paddedDomain } from "./response.ts";

/** One option: what it gives along x, what it costs along y. */
export interface CostPoint {
  name: string;
  gain: Ends;
  cost: Ends;
  /** No other option gives at least as much for no more cost (means compared). */
  undominated: boolean;
  base: boolean;
  /** Both figures in words, with their intervals. */
  text: string;
}

export interface CostColumns extends ChartWords {
  gain: Quantity;
  cost: Quantity;
  points: readonly CostPoint[];
}

const GUTTER = 64;

const LABEL_GUTTER = 200;

const HEIGHT = 280;

const MAX_LABELS = 14;

type Scale = ScaleLinear<number, number>;

/** What a variant gives and what it costs, by response key. */
const GAIN = "headsPerHour";

const COST = "costPerHead";

type Means = Pick<CostPoint, "gain" | "cost">;

/** Cost per head against throughput over the variants; null unless the study asks for both and compares something. */
export function costView(results: StudyResults): CostColumns | null {
  const gain = results.responses.find(({ key }) => key === GAIN);
  const cost = results.responses.find(({ key }) => key === COST);
  if (!gain || !cost || results.variants.length < 2) return null;
  const points = pointsOf(results, gain, cost);
  if (points.length < 2) return null;
  const front = points.filter(({ undominated }) => undominated);
  return {
    title: `${isolated(cost.label)} and throughput`,
    caption: "Bottom right is best. Open dots: another variant gives more for less",
    subtitle: `Mean over ${observationsWords(results)} with its ${formatConfidence(results.study.confidence)} interval. Filled: no other variant gives as much for so little. Where bars overlap, chance may decide`,
    description: `No other variant gives as much for so little as these ${front.length} of ${points.length}: ${front.map(({ name, text }) => `${quoted(name)} ${text}`).join("; ")}.`,
    gain: studyFormat(results, gain).quantity,
    cost: studyFormat(results, cost).quantity,
    points,
  };
}

function pointsOf(results: StudyResults, gain: ResponseInfo, cost: ResponseInfo): CostPoint[] {
  const known = results.variants.flatMap((variant, index) => {
    const [given, paid] = [variant.estimates[gain.key], variant.estimates[cost.key]];
    if (!given || !paid || given.n === 0 || paid.n === 0) return [];
    const words = (info: ResponseInfo, estimate: Estimate) =>
      estimateWords(estimate, studyFormat(results, info), results.study.confidence, observationNoun(results)).phrase;
    return [
      {
        name: isolated(variant.name),
        gain: endsOf(given),
        cost: endsOf(paid),
        base: index === 0,
        text: `${words(gain, given)}; ${words(cost, paid)}`,
      },
    ];
  });
  return known.map((point) => ({ ...point, undominated: !known.some((other) => dominates(other, point)) }));
}

/** Gives at least as much for no more, and is better in one of the two. */
function dominates(a: Means, b: Means): boolean {
  const [more, cheaper] = [a.gain.mean - b.gain.mean, b.cost.mean - a.cost.mean];
  return more >= 0 && cheaper >= 0 && more + cheaper > 0;
}

function endsOf({ mean, low, high }: Estimate): Ends {
  return { mean, low, high };
}

/** Cost against throughput: filled dots joined by a line are undominated, open ones cost more for less; the base is named. */
export function costChart(columns: CostColumns, context: ChartContext): SVGSVGElement {
  if (columns.points.length === 0) return emptyChart(columns, "No variant has both a throughput and a cost.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + 22;
  const floor = top + HEIGHT;
  const [left, right] = [frame.left + GUTTER, frame.right - labelGutter(frame)];
  const x = scaleLinear()
    .domain(paddedDomain(columns.points.map(({ gain }) => gain)))
    .range([left, right]);
  const y = scaleLinear()
    .domain(paddedDomain(columns.points.map(({ cost }) => cost)))
    .range([floor, top]);
  drawLeftAxis(frame, y, columns.cost, { left, right, labelY: top - 10 });
  const bottom = drawBottomAxis(frame, x, columns.gain, { top, y: floor });
  drawFront(frame, columns.points, x, y);
  const told = toldFirst(columns.points);
  if (frame.narrow) drawNumbers(frame, told, x, y);
  else drawLabels(frame, told, x, y);
  for (const point of columns.points) drawPoint(frame, point, x, y);
  return frame.finish(frame.narrow ? drawNumbered(frame, told.map(namedPoint), bottom) : bottom);
}

/** A narrow picture numbers its points and tells below who they are. */
function labelGutter({ narrow }: ChartFrame): number {
  return narrow ? 40 : LABEL_GUTTER;
}

function namedPoint({ name, base, text }: CostPoint): { name: string; text: string } {
  return { name: base ? `${name} (today)` : name, text };
}

/** Those that are named: the undominated and the base before the others. */
function toldFirst(points: readonly CostPoint[]): CostPoint[] {
  return [...points]
    .sort((a, b) => Number(b.undominated || b.base) - Number(a.undominated || a.base))
    .slice(0, MAX_LABELS);
}

function drawNumbers(frame: ChartFrame, told: readonly CostPoint[], x: Scale, y: Scale): void {
  const [floor, top] = y.range() as [number, number];
  const wishes = told.map(({ cost }) => y(cost.mean));
  const places = spreadLabels(wishes, 16, top + 4, floor - 8);
  const at = frame.right - 20;
  told.forEach((point, index) => {
    drawLead(frame, [x(point.gain.mean), wishes[index]!], [at - 4, places[index]!]);
    drawText(frame.body, at, places[index]! + 4, String(index + 1), { bold: point.undominated });
  });
}

function drawLead(frame: ChartFrame, [x, y]: readonly [number, number], [toX, toY]: readonly [number, number]): void {
  const lead = frame.body.append("path").attr("d", `M${x.toFixed(1)},${y.toFixed(1)}L${toX},${toY.toFixed(1)}`);
  lead.attr("stroke", frame.colour("rule")).attr("stroke-width", 0.7).attr("fill", "none");
}

/** The undominated options, the one that gives least first, joined: what a step up costs. */
function drawFront(frame: ChartFrame, points: readonly CostPoint[], x: Scale, y: Scale): void {
  const front = points.filter((point) => point.undominated).sort((a, b) => a.gain.mean - b.gain.mean);
  const path = line<CostPoint>(
    (point) => x(point.gain.mean),
    (point) => y(point.cost.mean),
  ).digits(1)(front);
  frame.body
    .append("path")
    .attr("d", path)
    .attr("fill", "none")
    .attr("stroke", frame.colour("line"))
    .attr("stroke-dasharray", "7 3");
}

function drawPoint(frame: ChartFrame, { name, gain, cost, undominated, text }: CostPoint, x: Scale, y: Scale): void {
  const group = readable(frame.body, `${name}: ${text}`);
  const style = {
    stroke: frame.colour(undominated ? "line" : "muted"),
    paper: frame.colour("paper"),
    filled: undominated,
  };
  drawLevelInterval(group, x, gain, y(cost.mean), style);
  drawUprightInterval(group, x(gain.mean), y, cost, style);
}

/** The undominated options and the base by name beside the plot, each with a thin line from its dot. */
function drawLabels(frame: ChartFrame, told: readonly CostPoint[], x: Scale, y: Scale): void {
  const [floor, top] = y.range() as [number, number];
  const wishes = told.map(({ cost }) => y(cost.mean));
  const lines = told.map(({ name, base }) => wrapText(base ? `${name} (today)` : name, LABEL_GUTTER - 24, 11, 2));
  const gap = lines.some((each) => each.length > 1) && told.length < 9 ? 30 : 18;
  const places = spreadLabels(wishes, gap, top + 4, floor - 8);
  const at = frame.right - LABEL_GUTTER + 20;
  told.forEach((point, index) => {
    const place = places[index]!;
    drawLead(frame, [x(point.gain.mean), wishes[index]!], [at - 4, place]);
    const texts = gap === 30 ? lines[index]! : wrapText(lines[index]!.join(" "), LABEL_GUTTER - 24, 11, 1);
    texts.forEach((text, row) => {
      const fill = frame.colour(point.undominated ? "ink" : "muted");
      drawText(frame.body, at, place + 4 + row * 13, text, { bold: point.undominated, fill });
    });
  });
}

/** What is had along x, what it takes of the total along y; null without a curve. */
export function tradeOffView(found: Improvement): CostColumns | null {
  const { curve, allocated, confidence } = found;
  const known = curve.filter((point) => point.goal !== null && point.uses !== null);
  if (known.length < 2) return null;
  const format = goalFormat(found);
  const label = { places: "Places", people: "People", budget: "Money spent", times: "Minutes moved", week: "Steps" }[
    allocated.kind
  ];
  const points = known.map((point) => {
    const { mean, low, high, halfWidth } = point.goal!;
    const name = isolated(point.isBase ? "as it is" : usesWords(point, found));
    return {
      ...{ name: point.keepsLimits ? name : `${name} (beyond a limit)`, gain: { mean, low, high } },
      ...{ cost: { mean: point.uses!, low: null, high: null }, undominated: point.undominated, base: point.isBase },
      text: `${isolated(point.name)}, ${usesWords(point, found)}: ${format.value(mean, halfWidth)}`,
    };
  });
  return {
    title: `${label} and ${lowerFirst(isolated(found.goal.label))}`,
    caption: `Bottom ${format.quantity.kind === "duration" ? "left" : "right"} is best. Open dots: another choice gives more for less`,
    subtitle: `The best arrangement found for each total, mean over ${known[0]!.goal!.n} simulated days with its ${formatConfidence(confidence)} interval. Filled: no other gives as much for so little. Where bars overlap, chance may decide`,
    description: `${points.map(({ text }) => text).join("; ")}.`,
    gain: format.quantity,
    cost: { kind: "number", label, unit: allocated.kind === "budget" ? isolated(allocated.unit) : "" },
    points,
  };
}

function lowerFirst(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

export function costTable({ gain, cost, points }: CostColumns): ChartTable {
  return {
    columns: [
      textColumn("variant"),
      ...endColumns(gain, `${gain.label}: `),
      ...endColumns(cost, `${cost.label}: `),
      textColumn("undominated"),
    ],
    rows: points.map((point) => [
      point.name,
      ...endCells(gain, point.gain),
      ...endCells(cost, point.cost),
      point.undominated ? "yes" : "no",
    ]),
  };
}
