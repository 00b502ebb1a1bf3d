import { scaleLinear } from "d3";
import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { CrewTrace, StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawClockAxis,
  drawClockGrid,
  drawPauses,
  drawText,
  emptyChart,
  isolated,
  LINE_HEIGHT,
  type PauseBand,
  type TimeScale,
  textureFill,
  timePlot,
  timeScale,
  wrapText,
} from "../frame/index.ts";
import { drawFootnote, stepBandPath, stepPath } from "../marks/index.ts";
import { WORK_IN_HAND_WORDS } from "../words/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";

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

export interface CrewColumns extends ChartWords {
  startClockSeconds: number;
  endSeconds: number;
  binSeconds: number;
  pauses: readonly PauseBand[];
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
  const frame = chartFrame(columns, context);
  const time = timeScale(frame, columns.endSeconds, frame.left + GUTTER, frame.right - 16);
  const top = frame.top + 14;
  const bottom = top + columns.panels.length * (PANEL + GAP) - GAP;
  const fill = textureFill(frame.defs, frame.id("busy"), "rising", frame.colour("range"), frame.colour("line"));
  timePlot(frame, top, bottom);
  drawPauses(frame.body, columns.pauses, time, top, bottom, frame.colour("pause"), frame.colour("muted"));
  drawClockGrid(frame.body, time, columns.startClockSeconds, top, bottom, frame.colour);
  columns.panels.forEach((panel, index) => {
    drawCrew(frame, panel, columns, fill, time, top + index * (PANEL + GAP));
  });
  const end = drawClockAxis(frame.body, time, columns.startClockSeconds, bottom + 6, frame.colour);
  return frame.finish(drawFootnote(frame, columns.footnote, end));
}

function drawCrew(
  frame: ChartFrame,
  panel: CrewPanel,
  columns: CrewColumns,
  fill: string,
  time: TimeScale,
  top: number,
): void {
  const floor = top + PANEL;
  const [left, right] = time.range() as [number, number];
  const people = scaleLinear()
    .domain([0, Math.max(1, panel.largest)])
    .range([floor, top + 3]);
  const muted = { fill: frame.colour("muted") };
  const lines = wrapText(panel.name, GUTTER - 34, 11, 2, true);
  lines.forEach((line, i) => {
    drawText(frame.body, frame.left, top + 10 + i * LINE_HEIGHT, line, { bold: true });
  });
  drawText(frame.body, frame.left, top + 10 + lines.length * LINE_HEIGHT, panel.note, muted);
  drawText(frame.body, left - 5, top + 8, formatDecimals(people.domain()[1]!, 0), { ...muted, anchor: "end" });
  drawText(frame.body, left - 5, floor + 3, "0", { ...muted, anchor: "end" });
  const starts = panel.busy.map((_, bin) => bin * columns.binSeconds);
  const edges = [...starts, columns.endSeconds].map(time);
  const band = stepBandPath(
    edges,
    panel.busy.map(people),
    panel.busy.map(() => floor),
  );
  frame.body.append("path").attr("d", band).attr("fill", fill);
  const present = frame.body
    .append("path")
    .attr("d", stepPath(starts.map(time), panel.present.map(people), time(columns.endSeconds)));
  present.attr("fill", "none").attr("stroke", frame.colour("ink")).attr("stroke-width", 1.5);
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
}
