import { max, scaleLinear, tickStep } from "d3";
import { formatDecimals, formatDuration, timeUnitFor } from "../../sim/text/units/index.ts";
import type { LimitRecord, StudyResults, Tally, VariantResults } from "../contract.ts";
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
  LINE_HEIGHT,
  spreadLabels,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { limitShareWords, shareWords } from "../words/index.ts";
import { type ChartTable, secondsColumn, textColumn } from "./chartTable.ts";
import { dayWords } from "./dayScene.ts";

export interface LimitColumns extends ChartWords {
  /** Name of the watched time, for the axis. */
  label: string;
  /** Ends of the axis, seconds. */
  fromSeconds: number;
  toSeconds: number;
  /** Equal bins; `beyond`: the whole bin lies outside the limit. */
  bins: readonly { from: number; to: number; heads: number; beyond: boolean }[];
  limits: readonly { seconds: number; text: string }[];
  /** Share outside the limit over all days, in words. */
  beyondText: string;
  /** The same of the day that is drawn; "" where nobody was timed. */
  dayText: string;
  /** Heads past the right end of the axis, in words; "" for none. */
  overflowText: string;
}

const GUTTER = 50;

const HEIGHT = 190;

interface EqualBins {
  bins: LimitColumns["bins"];
  from: number;
  to: number;
  /** Heads past `to`. */
  overflow: number;
}

/**
 * One limit of a variant: the share of heads outside it over all simulated days, and the times of the first day in equal bins
 * that end on the limit, which only illustrate it.
 */
export function limitView(results: StudyResults, variant: VariantResults, limit: LimitRecord): LimitColumns {
  const { tally } = limit;
  const name = isolated(limit.name);
  const source = results.plan.limitSources[limit.name];
  const outside = tally.count === 0 ? "" : shareWords(limit.beyond, tally.count, "heads");
  const share = limitShareWords(results, variant, limit.name);
  const { bins, from, to, overflow } = equalBins(limit);
  return {
    title: `${name}: times of the heads, and the limit`,
    caption: "Hatched bars are outside the limit. Look at how far, not only at how many",
    subtitle: `Bars: every head of ${dayWords(results, variant)}, as an example. Source of the limit: ${source ? isolated(source) : "no source named in the plan"}`,
    description:
      tally.count === 0
        ? `${share}. No head was timed on the day in the picture.`
        : `${share}. On the day in the picture: ${outside}. ${spreadWords(tally)}`,
    label: name,
    fromSeconds: from,
    toSeconds: to,
    bins,
    limits: limitWords(limit),
    beyondText: share,
    dayText: outside === "" ? "" : `this day: ${outside}`,
    overflowText:
      overflow > 0.5
        ? `${formatDecimals(overflow, 0)} ${Math.round(overflow) === 1 ? "head" : "heads"} beyond this axis, the longest ${formatDuration(tally.max)}`
        : "",
  };
}

function spreadWords(tally: Tally): string {
  return `Half of the heads took up to ${formatDuration(tally.quantiles.p50)}, 95 % up to ${formatDuration(tally.quantiles.p95)}, the longest ${formatDuration(tally.max)}.`;
}

function limitWords(limit: LimitRecord): { seconds: number; text: string }[] {
  const words: { seconds: number; text: string }[] = [];
  if (limit.minSeconds !== null)
    words.push({ seconds: limit.minSeconds, text: `at least ${formatDuration(limit.minSeconds)}` });
  if (limit.maxSeconds !== null)
    words.push({ seconds: limit.maxSeconds, text: `at most ${formatDuration(limit.maxSeconds)}` });
  return words;
}

/** Some forty equal bins with an edge on the limit. The axis ends past limit and 99 % of heads; a longer tail is counted. */
function equalBins(limit: LimitRecord): EqualBins {
  const { tally, minSeconds, maxSeconds } = limit;
  const ends = [minSeconds, maxSeconds].filter((end) => end !== null);
  if (tally.count === 0) return { bins: [], from: 0, to: 1, overflow: 0 };
  const enough = Math.max(...ends, tally.quantiles.p99) * 1.25;
  const high = tally.max > 1.6 * enough ? enough : Math.max(tally.max, ...ends.map((end) => end * 1.05));
  const near = Math.min(tally.min, ...ends);
  const low = near > 0.4 * high ? near : 0;
  const { seconds } = timeUnitFor(high);
  const step = tickStep(low / seconds, high / seconds, 40) * seconds;
  const anchor = maxSeconds ?? minSeconds ?? 0;
  const first = Math.floor((low - anchor) / step + 1e-9);
  const last = Math.floor((high - anchor) / step + 1e-9) + 1;
  const edges = Array.from({ length: last - first + 1 }, (_, k) => anchor + (first + k) * step);
  const heads = spreadOver(tally, edges);
  const bins = heads.map((count, k) => {
    const middle = (edges[k]! + edges[k + 1]!) / 2;
    const outside = (maxSeconds !== null && middle > maxSeconds) || (minSeconds !== null && middle < minSeconds);
    return { from: Math.max(0, edges[k]!), to: edges[k + 1]!, heads: count, beyond: outside };
  });
  const counted = heads.reduce((sum, count) => sum + count, 0);
  return { bins, from: Math.max(0, edges[0]!), to: edges.at(-1)!, overflow: tally.count - counted };
}

/**
 * Counts of fine bins shared out over coarse ones by overlap. A fine bin reaches past the least or greatest value that
 * was seen; that part of it holds nobody, so it is cut off first.
 */
function spreadOver(tally: Tally, edges: readonly number[]): number[] {
  const heads = new Array<number>(edges.length - 1).fill(0);
  const step = edges[1]! - edges[0]!;
  for (const fine of tally.bins) {
    const low = Math.max(fine.from, tally.min);
    const high = Math.min(fine.to, tally.max);
    heads.forEach((_, k) => {
      heads[k]! += fine.count * shareWithin(low, high, edges[k]!, edges[k]! + step);
    });
  }
  return heads;
}

/** Share of [low, high] that lies within [from, to); a single value lies in one bar as a whole. */
function shareWithin(low: number, high: number, from: number, to: number): number {
  if (high <= low) return low >= from && low < to ? 1 : 0;
  return Math.max(0, Math.min(to, high) - Math.max(from, low)) / (high - low);
}

/** A watched time over the heads of one day, the limit drawn, the part outside it textured; the share outside over all days in words. */
export function limitChart(columns: LimitColumns, context: ChartContext): SVGSVGElement {
  if (columns.bins.length === 0) {
    return emptyChart(
      columns,
      "No head passed both points of this limit on this day, so there is nothing to show.",
      context,
    );
  }
  const frame = chartFrame(columns, context);
  const words = wordsOf(frame, columns);
  const lines = frame.narrow ? words.length : columns.overflowText === "" ? 2 : 3;
  const top = frame.top + (frame.narrow ? 46 : 32) + lines * LINE_HEIGHT;
  const floor = top + HEIGHT;
  const [left, right] = [frame.left + GUTTER, frame.right - 20];
  const x = scaleLinear().domain([columns.fromSeconds, columns.toSeconds]).range([left, right]);
  const heads = scaleLinear()
    .domain([0, max(columns.bins, (bin) => bin.heads) || 1])
    .nice()
    .range([floor, top]);
  const counted = { kind: "number", label: "in each bar", unit: "heads" } as const;
  drawLeftAxis(frame, heads, counted, { left, right, labelY: frame.narrow ? top - 30 : frame.top + 8 });
  const end = drawBottomAxis(frame, x, { kind: "duration", label: columns.label }, { y: floor });
  drawBars(frame, columns, x, heads);
  drawLimits(frame, columns, x, top, floor);
  words.forEach(({ text, bold }, i) => {
    const y = frame.top + 8 + i * LINE_HEIGHT + (bold ? 0 : 2);
    if (frame.narrow) drawText(frame.body, frame.left, y, text, { bold });
    else drawText(frame.body, right, y, text, { anchor: "end", bold, ...(bold ? { size: 12 } : {}) });
  });
  return frame.finish(end);
}

/** How many are outside, line by line: at the right above the plot, in a narrow picture over its whole width. */
function wordsOf(
  frame: ChartFrame,
  { beyondText, dayText, overflowText }: LimitColumns,
): { text: string; bold: boolean }[] {
  const said = [beyondText, dayText, overflowText];
  if (!frame.narrow) return said.flatMap((text, i) => (text === "" ? [] : [{ text, bold: i === 0 }]));
  return said.flatMap((text, i) => {
    if (text === "") return [];
    return wrapText(text, frame.right - frame.left, 11, 4, i === 0).map((line) => ({ text: line, bold: i === 0 }));
  });
}

function drawBars(
  frame: ChartFrame,
  columns: LimitColumns,
  x: (v: number) => number,
  heads: (v: number) => number,
): void {
  const beyond = textureFill(frame.defs, frame.id("beyond"), "rising", frame.colour("beyond"), frame.colour("limit"));
  for (const bin of columns.bins) {
    if (bin.heads <= 0) continue;
    const height = Math.max(1, heads(0) - heads(bin.heads));
    const bar = frame.body
      .append("rect")
      .attr("x", (x(bin.from) + 0.5).toFixed(1))
      .attr("y", (heads(0) - height).toFixed(1));
    bar.attr("width", Math.max(0.8, x(bin.to) - x(bin.from) - 1).toFixed(1)).attr("height", height.toFixed(1));
    bar.attr("fill", bin.beyond ? beyond : frame.colour("working"));
  }
}

function drawLimits(
  frame: ChartFrame,
  columns: LimitColumns,
  x: (v: number) => number,
  top: number,
  floor: number,
): void {
  const [low, high] = [frame.left, frame.right];
  const halves = columns.limits.map((limit) => textWidth(limit.text, 12, true) / 2);
  const widest = Math.max(0, ...halves) * 2 + 12;
  const wishes = columns.limits.map((limit, i) =>
    Math.min(Math.max(x(limit.seconds), low + halves[i]!), high - halves[i]!),
  );
  const places = spreadLabels(wishes, widest, low + widest / 2, high - widest / 2);
  columns.limits.forEach((limit, i) => {
    const at = x(limit.seconds).toFixed(1);
    const rule = frame.body
      .append("path")
      .attr("d", `M${at},${top - 6}V${floor}`)
      .attr("stroke", frame.colour("limit"));
    rule.attr("stroke-width", 2).attr("stroke-dasharray", "6 3");
    drawText(frame.body, places[i]!, top - 11, limit.text, {
      anchor: "middle",
      size: 12,
      bold: true,
      fill: frame.colour("limit"),
    });
  });
}

export function limitTable(columns: LimitColumns): ChartTable {
  return {
    columns: [
      secondsColumn("from"),
      secondsColumn("to"),
      { name: "heads", unit: "heads" },
      textColumn("outside the limit"),
    ],
    rows: columns.bins.map(({ from, to, heads, beyond }) => [from, to, heads, beyond ? "yes" : "no"]),
  };
}
