import { scaleLinear } from "d3";
import { does } from "../../sim/text/kinds/index.ts";
import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { StageRecord, StepTrace, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawText,
  emptyChart,
  finishDay,
  type Group,
  isolated,
  LINE_HEIGHT,
  wrapText,
} from "../frame/index.ts";
import { drawTrace, type TraceColumns } from "../marks/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { drawPanelHead, PANEL_GUTTERS, panelTops } from "./panelWords.ts";
import { plain, scene, type TimeReadings, type TimeSeries } from "./timeReadings.ts";

export interface QueuePanel {
  name: string;
  /** A line of figures below the name, say "most 8, mean 4.7 heads". */
  note: string;
  /** Height of the capacity line; null draws none. */
  capacity: number | null;
  capacityText: string;
  largest: number;
  trace: TraceColumns;
}

export interface QueueColumns extends ChartWords, DayScene {
  panels: readonly QueuePanel[];
  /** Said below the panels: what was left out. */
  footnote: string;
}

export const PANEL = 50;

export const GAP = 16;

/** Many panels stand closer, so that the picture fits on a sheet of paper without being made smaller. */
const CLOSE_PANEL = 34;

const CLOSE_GAP = 10;

const MAX_ROOMY = 11;

export const GUTTER = 182;

export const RIGHT_GUTTER = 84;

/** More change points than this are drawn as low, high and mean by bin: at page width nobody could tell them apart. */
const MAX_POINTS = 1500;

/** Queue traces of a variant's first day, heads only (crates: `loadView`); stages where nothing ever waited are named below instead of drawn. */
export function queueView(results: StudyResults, variant: VariantResults): QueueColumns {
  const { stages, traces, finishSeconds } = variant.day;
  const pairs = stages
    .map((stage, index) => ({ stage, trace: traces?.queues[index] }))
    .filter((pair) => !does(pair.stage, "handle crates"));
  const drawn = pairs.filter(
    (pair) => pair.stage.queue.max > 0 && pair.trace !== undefined && pointsOf(pair.trace) > 0,
  );
  const idle = pairs.filter((pair) => pair.stage.queue.max === 0).map((pair) => isolated(pair.stage.name));
  const panels = drawn.map((pair) => panelOf(pair.stage, traceColumns(pair.trace!, finishSeconds)));
  const footnote =
    traces === null ? "This day was run without traces, so the queues cannot be drawn." : idleWords(idle);
  return {
    ...dayScene(results, variant),
    title: "What waits before each station",
    caption: "Curve on the dashed line: all places are taken, and the station before has to wait",
    subtitle: `Heads waiting (in a trough or chiller: heads in it), ${dayWords(results, variant)}. ${shapeWords(panels)}`,
    description: describe(drawn.map((pair) => pair.stage)),
    panels,
    footnote,
  };
}

/** A trace as it is drawn: every step where they are few, bins where they are many. */
export function traceColumns(trace: StepTrace, endSeconds: number): TraceColumns {
  if (trace.kind === "exact" && trace.times.length <= MAX_POINTS) return trace;
  return { kind: "binned", ...binnedTrace(trace, drawingBinSeconds(endSeconds)) };
}

function pointsOf(trace: StepTrace): number {
  return trace.kind === "exact" ? trace.times.length : trace.mean.length;
}

/** Queue before one stage, with its places. */
export function panelOf(stage: StageRecord, trace: TraceColumns): QueuePanel {
  const crates = does(stage, "handle crates");
  const limited = Number.isFinite(stage.places) && stage.places > 0;
  // A line four times above everything that happened would flatten the trace; then the words alone carry it.
  const drawn = limited && stage.places <= 4 * stage.queue.max;
  return {
    name: isolated(stage.name),
    note: `${crates ? "crates" : "heads"}: most ${formatDecimals(stage.queue.max, 0)}, mean ${formatDecimals(stage.queue.mean, stage.queue.mean < 100 ? 1 : 0)}`,
    capacity: drawn ? stage.places : null,
    capacityText: capacityWords(stage),
    largest: stage.queue.max,
    trace,
  };
}

/** Heads can wait where there is no place: in the crate at the hanging point, or at a position that has no crew. */
function capacityWords(stage: StageRecord): string {
  if (!Number.isFinite(stage.places)) return "no limit of places";
  if (stage.places === 0) return "no places of its own";
  const things = does(stage, "handle crates") ? "crate" : "place";
  return `${formatDecimals(stage.places, 0)} ${things}${stage.places === 1 ? "" : "s"}`;
}

function shapeWords(panels: readonly QueuePanel[]): string {
  const binned = panels.map((panel) => panel.trace).find((trace) => trace.kind === "binned");
  const band = binned ? `Band: lowest to highest in each ${formatDuration(binned.binSeconds)}, line: mean. ` : "";
  return `${band}Dashed: number of places.`;
}

function idleWords(names: readonly string[]): string {
  return names.length === 0 ? "" : `Nothing ever waited before: ${names.join(", ")}.`;
}

function describe(stages: readonly StageRecord[]): string {
  const full = stages.filter(
    (stage) => stage.places > 0 && Number.isFinite(stage.places) && stage.queue.max >= stage.places,
  );
  const names = full.map((stage) => isolated(stage.name)).join(", ");
  const longest = [...stages]
    .filter((stage) => does(stage, "buffer heads"))
    .sort((a, b) => b.queue.mean - a.queue.mean)[0];
  const first = longest
    ? `On average most heads waited before ${isolated(longest.name)}: ${formatDecimals(longest.queue.mean, 1)}, at most ${formatDecimals(longest.queue.max, 0)}. `
    : "";
  return `${first}${full.length === 0 ? "No stage ran out of places." : `All places were taken at some time at: ${names}.`}`;
}

/** Heads waiting before each station over the clock: one panel a station, shared time axis, capacity line with its label. */
export function queueChart(columns: QueueColumns, context: ChartContext): SVGSVGElement {
  if (columns.panels.length === 0) return emptyChart(columns, columns.footnote, context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: RIGHT_GUTTER }, PANEL_GUTTERS);
  const top = frame.top + 14;
  const roomy = columns.panels.length <= MAX_ROOMY;
  const [height, gap] = roomy ? [PANEL, GAP] : [CLOSE_PANEL, CLOSE_GAP];
  const { tops, bottom } = panelTops(frame, columns.panels.map(queueHead), { top, height, gap });
  drawDayPlot(frame, top, bottom);
  columns.panels.forEach((panel, index) => {
    drawPanel(frame, panel, tops[index]!, height);
  });
  return finishDay(frame, bottom + 6, columns.footnote);
}

/** What a narrow picture says above a panel. */
export function queueHead({ name, note, capacityText }: QueuePanel): { name: string; notes: string[] } {
  return { name, notes: [note, capacityText] };
}

/** One panel of a shared time axis: words at the left, trace over its scale, capacity line with its label at the right. */
export function drawPanel(frame: DayFrame, panel: QueuePanel, top: number, height: number): void {
  const group = frame.body.append("g");
  const floor = top + height;
  const { left, right } = frame.plot;
  const value = scaleLinear()
    .domain([0, Math.max(1, panel.largest, panel.capacity ?? 0)])
    .range([floor, top + 3]);
  if (frame.narrow) drawPanelHead(frame, queueHead(panel), top);
  else drawPanelWords(frame, group, panel, top);
  drawText(group, left - 5, value(value.domain()[1]!) + 5, formatDecimals(value.domain()[1]!, 0), {
    anchor: "end",
    fill: frame.colour("muted"),
  });
  drawText(group, left - 5, floor + 3, "0", { anchor: "end", fill: frame.colour("muted") });
  group.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  drawTrace(frame, group, panel.trace, value);
  if (panel.capacity !== null) {
    const line = group.append("path").attr("d", `M${left},${value(panel.capacity)}H${right}`);
    line.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.5).attr("stroke-dasharray", "6 3");
  }
  if (frame.narrow) return;
  const words = wrapText(panel.capacityText, RIGHT_GUTTER - 8, 11, 3);
  const middle = top + (height - words.length * LINE_HEIGHT) / 2 + 11;
  const labelY = panel.capacity === null ? middle : value(panel.capacity) + 4;
  const ink = frame.colour(panel.capacity === null ? "muted" : "limit");
  words.forEach((line, i) => {
    drawText(group, right + 8, labelY + i * LINE_HEIGHT, line, { fill: ink });
  });
}

function drawPanelWords(frame: DayFrame, group: Group, panel: QueuePanel, top: number): void {
  const lines = wrapText(panel.name, GUTTER - 34, 11, 2, true);
  lines.forEach((line, i) => {
    drawText(group, frame.left, top + 10 + i * LINE_HEIGHT, line, { bold: true });
  });
  drawText(group, frame.left, top + 10 + lines.length * LINE_HEIGHT, panel.note, { fill: frame.colour("muted") });
}

export function queueReadings(columns: QueueColumns): TimeReadings {
  return { ...scene(columns), series: columns.panels.map((panel) => queueSeries(panel, "heads")) };
}

export function queueSeries({ name, trace }: QueuePanel, unit: string): TimeSeries {
  return plain(name, unit, trace);
}
