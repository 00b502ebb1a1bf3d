import { scaleLinear } from "d3";
import { does } from "../../sim/text/kinds/index.ts";
import { formatDecimals } from "../../sim/text/units/index.ts";
import type { StageRecord, StepTrace, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  clockAt,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawLeftAxis,
  drawText,
  emptyChart,
  finishDay,
  isolated,
  LINE_HEIGHT,
  wrapText,
} from "../frame/index.ts";
import { drawTrace, type TraceColumns } from "../marks/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { traceColumns } from "./queue.ts";
import { plain, scene, type TimeReadings } from "./timeReadings.ts";

/** What a chiller holds, or the heat it has to carry off, over the day. */
export interface ChillerPanel {
  label: string;
  unit: string;
  trace: TraceColumns;
  largest: number;
  /** Height of the capacity line; null draws none. */
  capacity: number | null;
  capacityText: string;
}

export interface ChillerColumns extends ChartWords, DayScene {
  panels: readonly ChillerPanel[];
  footnote: string;
}

const PANEL = 120;

const GUTTER = 52;

const RIGHT_GUTTER = 96;

/** Bleeding and draining take minutes, chilling most of an hour or more: what tells a chiller whose time is not computed. */
const MIN_CHILLING_SECONDS = 1800;

/** The chillers of a line, as far as a day's record tells them: dwell stages that take heat out, or hold heads for long. */
export function chillersOf({ day }: Pick<VariantResults, "day">): StageRecord[] {
  return day.stages.filter(
    (stage) =>
      does(stage, "hold heads") &&
      stage.processed > 0 &&
      (stage.heatJoules > 0 || (stage.stateSeconds[0] ?? 0) / stage.processed >= MIN_CHILLING_SECONDS),
  );
}

/** Fill of one chiller over a variant's first day and, where the plan computes chilling, the heat out of the carcasses. */
export function chillerView(results: StudyResults, variant: VariantResults, stage: StageRecord): ChillerColumns {
  const { day } = variant;
  const trace = day.traces?.queues[day.stages.indexOf(stage)];
  const name = isolated(stage.name);
  const watts = wattsPerHead(stage, day.finishSeconds - day.watchedFromSeconds);
  const most = (watts * stage.queue.max) / 1000;
  const columns = trace === undefined ? null : traceColumns(trace, day.finishSeconds);
  const heat = watts > 0 ? `; heat out of the carcasses at most ${formatDecimals(most, most < 100 ? 1 : 0)} kW` : "";
  return {
    ...dayScene(results, variant),
    title: `${name}: how full it was${watts > 0 ? ", and how much heat came out" : ""}`,
    caption: captionOf(stage),
    subtitle: `Heads in it${watts > 0 ? " and heat out of the carcasses" : ""}, ${dayWords(results, variant)}`,
    description: `${name} held at most ${formatDecimals(stage.queue.max, 0)} heads (${placesWords(stage)})${peakWords(trace, day.startClockSeconds)}${heat}.`,
    panels:
      columns === null
        ? []
        : [fillPanel(name, stage, columns), ...(watts > 0 ? [heatPanel(columns, watts, most)] : [])],
    footnote:
      columns === null
        ? "This day was run without traces, so the fill cannot be drawn."
        : watts > 0
          ? "Heat: what a carcass gives off until it is cooled, spread evenly over its stay. A warm carcass gives off more, so after a fast start the true load is higher. Fans, walls, doors and people come on top."
          : "",
  };
}

/** A limit far above all that happened would flatten the curve. */
function isLimitDrawn({ places, queue }: StageRecord): boolean {
  return Number.isFinite(places) && places <= 4 * queue.max;
}

function captionOf(stage: StageRecord): string {
  return isLimitDrawn(stage)
    ? "Dashed: its places. Where the curve meets it, no carcass can come in and the line stands"
    : "The highest point: so many carcasses were in it at once";
}

function fillPanel(name: string, stage: StageRecord, trace: TraceColumns): ChillerPanel {
  return {
    label: `in ${name}`,
    unit: "heads",
    trace,
    largest: stage.queue.max,
    capacity: isLimitDrawn(stage) ? stage.places : null,
    capacityText: placesWords(stage),
  };
}

function heatPanel(fill: TraceColumns, watts: number, most: number): ChillerPanel {
  const kilowatts = (heads: number) => (heads * watts) / 1000;
  const trace: TraceColumns =
    fill.kind === "exact"
      ? { ...fill, values: fill.values.map(kilowatts) }
      : { ...fill, low: fill.low.map(kilowatts), high: fill.high.map(kilowatts), mean: fill.mean.map(kilowatts) };
  return {
    label: "heat out of the carcasses",
    unit: "kW",
    trace,
    largest: most,
    capacity: null,
    capacityText: `most ${formatDecimals(most, most < 100 ? 1 : 0)} kW`,
  };
}

/** Heat a head gives off per second that it is there, on the average (Little 1961: heads x seconds = mean x time). */
function wattsPerHead(stage: StageRecord, watchedSeconds: number): number {
  const headSeconds = stage.queue.mean * watchedSeconds;
  return headSeconds > 0 ? stage.heatJoules / headSeconds : 0;
}

function placesWords({ places }: StageRecord): string {
  return Number.isFinite(places) ? `${formatDecimals(places, 0)} places` : "no limit of places";
}

/** When it held most; "" without a trace. */
function peakWords(trace: StepTrace | undefined, start: number): string {
  if (trace === undefined) return "";
  const values = trace.kind === "exact" ? trace.values : trace.high;
  let peak = 0;
  for (let i = 1; i < values.length; i++) if (values[i]! > values[peak]!) peak = i;
  const seconds = trace.kind === "exact" ? trace.times[peak] : peak * trace.binSeconds;
  return seconds === undefined ? "" : `, about ${clockAt(seconds, start)}`;
}

/** The fill of a chiller against its places, and below it the heat that comes out of the carcasses. */
export function chillerChart(columns: ChillerColumns, context: ChartContext): SVGSVGElement {
  if (columns.panels.length === 0) return emptyChart(columns, columns.footnote, context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: RIGHT_GUTTER }, { left: GUTTER, right: 8 });
  let top = frame.top;
  for (const panel of columns.panels) {
    const words = frame.narrow ? capacityLines(frame, panel) : [];
    top += words.length * LINE_HEIGHT;
    drawChillerPanel(frame, panel, top + 36);
    // Above the plot, below the axis's own name.
    words.forEach((line, i) => {
      const fill = frame.colour(panel.capacity === null ? "muted" : "limit");
      drawText(frame.body, frame.left, top + 14 - (words.length - i) * LINE_HEIGHT, line, { fill });
    });
    top += PANEL + 48;
  }
  return finishDay(frame, top - 10, columns.footnote);
}

function capacityLines(frame: DayFrame, { capacity, capacityText }: ChillerPanel): string[] {
  if (capacityText === "") return [];
  const words = capacity === null ? capacityText : `Dashed: ${capacityText}`;
  return wrapText(words, frame.right - frame.left, 11, 3);
}

function drawChillerPanel(frame: DayFrame, panel: ChillerPanel, top: number): void {
  const floor = top + PANEL;
  const { left, right } = frame.plot;
  const value = scaleLinear()
    .domain([0, Math.max(panel.largest, panel.capacity ?? 0) * 1.04 || 1])
    .range([floor, top]);
  drawDayPlot(frame, top, floor);
  const quantity = { kind: "number", label: panel.label, unit: panel.unit } as const;
  drawLeftAxis(frame, value, quantity, { left, right, labelY: top - 22 });
  drawTrace(frame, frame.body, panel.trace, value);
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  if (panel.capacity !== null) {
    const line = frame.body.append("path").attr("d", `M${left},${value(panel.capacity).toFixed(1)}H${right}`);
    line.attr("stroke", frame.colour("limit")).attr("stroke-width", 1.5).attr("stroke-dasharray", "6 3");
  }
  if (frame.narrow) return;
  const labelY = panel.capacity === null ? top + 12 : value(panel.capacity) + 4;
  const fill = frame.colour(panel.capacity === null ? "muted" : "limit");
  wrapText(panel.capacityText, RIGHT_GUTTER - 10, 11, 3).forEach((text, i) => {
    drawText(frame.body, right + 8, labelY + i * 14, text, { fill });
  });
}

export function chillerReadings(columns: ChillerColumns): TimeReadings {
  return { ...scene(columns), series: columns.panels.map(({ label, unit, trace }) => plain(label, unit, trace)) };
}
