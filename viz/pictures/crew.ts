import { scaleLinear } from "d3";
import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { CrewTrace, StudyResults, VariantResults } from "../contract.ts";
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
  isolated,
  LINE_HEIGHT,
  textureFill,
  wrapText,
} from "../frame/index.ts";
import { stepBandPath, stepPath } from "../marks/index.ts";
import { WORK_IN_HAND_WORDS } from "../words/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { drawPanelHead, PANEL_GUTTERS, panelTops } from "./panelWords.ts";
import { meansOnly, scene, type TimeReadings, type TimeSeries } from "./timeReadings.ts";

/** People of one crew by time bin. */
export interface CrewPanel {
  name: string;
  /** A line of figures below the name. */
  note: string;
  largest: number;
  /** Mean number with work in hand and mean number on duty. */
  busy: readonly number[];
  present: readonly number[];
}

export interface CrewColumns extends ChartWords, DayScene {
  binSeconds: number;
  panels: readonly CrewPanel[];
  footnote: string;
}

const PANEL = 44;

const GAP = 16;

const GUTTER = 182;

/** People at work and on duty over a variant's first day; null for a plan without crews. */
export function crewView(results: StudyResults, variant: VariantResults): CrewColumns | null {
  const { crews, traces, finishSeconds } = variant.day;
  if (crews.length === 0) return null;
  const wished = drawingBinSeconds(finishSeconds);
  const binSeconds = traces?.crews[0] ? binnedTrace(traces.crews[0].busy, wished).binSeconds : wished;
  const shares = crews.map(({ name, busySeconds, presentSeconds }) => ({
    name: isolated(name),
    share: presentSeconds > 0 ? busySeconds / presentSeconds : 0,
  }));
  return {
    ...dayScene(results, variant),
    title: "Who had work in hand",
    caption: "White under the line: people on duty with nothing to do. No white: nobody to spare",
    subtitle: `People on duty (line) and with work in hand (hatched), mean of each ${formatDuration(binSeconds)}, ${dayWords(results, variant)}`,
    description: describe(shares),
    binSeconds,
    panels: (traces?.crews ?? []).map((trace, index) => panelOf(trace, shares[index]!.share, wished)),
    footnote: traces === null ? "This day was run without traces, so the crews cannot be drawn." : WORK_IN_HAND_WORDS,
  };
}

function panelOf(trace: CrewTrace, share: number, binSeconds: number): CrewPanel {
  const present = binnedTrace(trace.present, binSeconds);
  return {
    name: isolated(trace.name),
    note: `at work ${formatDecimals(share * 100, 0)} % of time on duty`,
    largest: Math.max(0, ...present.high),
    busy: binnedTrace(trace.busy, binSeconds).mean,
    present: present.mean,
  };
}

function describe(shares: readonly { name: string; share: number }[]): string {
  const sorted = [...shares].sort((a, b) => b.share - a.share);
  return `With work in hand, share of time on duty: ${sorted.map(({ name, share }) => `${name} ${formatDecimals(share * 100, 0)} %`).join(", ")}.`;
}

/** People on duty and, filled, those with work in hand, one panel a crew over the clock. */
export function crewChart(columns: CrewColumns, context: ChartContext): SVGSVGElement {
  if (columns.panels.length === 0) return emptyChart(columns, columns.footnote || "The plan has no crew.", context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: 16 }, PANEL_GUTTERS);
  const top = frame.top + 14;
  const { tops, bottom } = panelTops(frame, columns.panels.map(headOf), { top, height: PANEL, gap: GAP });
  const fill = textureFill(frame.defs, frame.id("busy"), "rising", frame.colour("range"), frame.colour("line"));
  drawDayPlot(frame, top, bottom);
  columns.panels.forEach((panel, index) => {
    drawCrew(frame, panel, columns.binSeconds, fill, tops[index]!);
  });
  return finishDay(frame, bottom + 6, columns.footnote);
}

function headOf({ name, note }: CrewPanel): { name: string; notes: string[] } {
  return { name, notes: [note] };
}

function drawCrewWords(frame: DayFrame, panel: CrewPanel, top: number): void {
  const lines = wrapText(panel.name, GUTTER - 34, 11, 2, true);
  lines.forEach((line, i) => {
    drawText(frame.body, frame.left, top + 10 + i * LINE_HEIGHT, line, { bold: true });
  });
  const muted = { fill: frame.colour("muted") };
  drawText(frame.body, frame.left, top + 10 + lines.length * LINE_HEIGHT, panel.note, muted);
}

function drawCrew(frame: DayFrame, panel: CrewPanel, binSeconds: number, fill: string, top: number): void {
  const floor = top + PANEL;
  const { left, right } = frame.plot;
  const people = scaleLinear()
    .domain([0, Math.max(1, panel.largest)])
    .range([floor, top + 3]);
  const muted = { fill: frame.colour("muted") };
  if (frame.narrow) drawPanelHead(frame, headOf(panel), top);
  else drawCrewWords(frame, panel, top);
  drawText(frame.body, left - 5, top + 8, formatDecimals(people.domain()[1]!, 0), { ...muted, anchor: "end" });
  drawText(frame.body, left - 5, floor + 3, "0", { ...muted, anchor: "end" });
  const starts = panel.busy.map((_, bin) => frame.time(bin * binSeconds));
  const edges = [...starts, right];
  const band = stepBandPath(
    edges,
    panel.busy.map(people),
    panel.busy.map(() => floor),
  );
  frame.body.append("path").attr("d", band).attr("fill", fill);
  const present = frame.body.append("path").attr("d", stepPath(starts, panel.present.map(people), right));
  present.attr("fill", "none").attr("stroke", frame.colour("ink")).attr("stroke-width", 1.5);
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
}

export function crewReadings(columns: CrewColumns): TimeReadings {
  const series = columns.panels.flatMap(({ name, busy, present }): TimeSeries[] => [
    { group: name, name: "with work in hand", unit: "people", trace: meansOnly(columns.binSeconds, busy) },
    { group: name, name: "on duty", unit: "people", trace: meansOnly(columns.binSeconds, present) },
  ]);
  return { ...scene(columns), series };
}
