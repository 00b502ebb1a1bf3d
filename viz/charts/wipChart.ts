import { max, scaleLinear } from "d3";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawClockAxis,
  drawClockGrid,
  drawLeftAxis,
  drawPauses,
  drawText,
  emptyChart,
  FILLS,
  type PauseBand,
  spreadLabels,
  type Texture,
  type TimeScale,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { stepBandPath } from "../marks/index.ts";

export interface WipSection {
  name: string;
  /** Mean heads in the section by time bin. */
  values: readonly number[];
}

export interface WipColumns extends ChartWords {
  startClockSeconds: number;
  endSeconds: number;
  binSeconds: number;
  pauses: readonly PauseBand[];
  /** One stacked panel each, first one on top; sections stack upwards in the order given. */
  panels: readonly { name: string; sections: readonly WipSection[] }[];
}

const PANEL = 170;
const GUTTER = 46;
const RIGHT_GUTTER = 118;
const TEXTURES: readonly Texture[] = ["plain", "rising", "dots", "level", "cross", "falling"];

/** Heads in each section over the clock, stacked, every section labelled beside its own area. */
export function wipChart(columns: WipColumns, context: ChartContext): SVGSVGElement {
  const panels = columns.panels.filter((panel) => panel.sections.length > 0);
  if (panels.length === 0) return emptyChart(columns, "No section of the line held any head on this day.", context);
  const frame = chartFrame(columns, context);
  const time = scaleLinear()
    .domain([0, columns.endSeconds])
    .range([frame.left + GUTTER, frame.right - RIGHT_GUTTER]);
  const edges = panels[0]!.sections[0]!.values.map((_, bin) => time(bin * columns.binSeconds));
  edges.push(time(columns.endSeconds));
  let top = frame.top;
  let fill = 0;
  for (const panel of panels) {
    drawStackPanel(frame, panel, columns, time, edges, top + 34, fill);
    fill += panel.sections.length;
    top += PANEL + 46;
  }
  return frame.finish(drawClockAxis(frame.body, time, columns.startClockSeconds, top - 12, frame.colour));
}

function drawStackPanel(
  frame: ChartFrame,
  panel: WipColumns["panels"][number],
  columns: WipColumns,
  time: TimeScale,
  edges: readonly number[],
  top: number,
  firstFill: number,
): void {
  const floor = top + PANEL;
  const totals = edges.slice(1).map((_, bin) => panel.sections.reduce((sum, section) => sum + section.values[bin]!, 0));
  const heads = scaleLinear()
    .domain([0, (max(totals) ?? 0) || 1])
    .nice()
    .range([floor, top]);
  const [left, right] = time.range() as [number, number];
  drawPauses(frame.body, columns.pauses, time, top, floor, frame.colour("pause"), frame.colour("muted"));
  drawClockGrid(frame.body, time, columns.startClockSeconds, top, floor, frame.colour);
  drawLeftAxis(
    frame.body,
    heads,
    { kind: "number", label: panel.name, unit: "heads" },
    left,
    right,
    top - 20,
    frame.colour,
  );
  const labels: AreaLabel[] = [];
  const below = new Array<number>(totals.length).fill(0);
  panel.sections.forEach((section, index) => {
    const lower = below.map(heads);
    section.values.forEach((value, bin) => {
      below[bin]! += value;
    });
    const upper = below.map(heads);
    const fill = sectionFill(frame, firstFill + index);
    const area = frame.body
      .append("path")
      .attr("d", stepBandPath(edges, upper, lower))
      .attr("fill", fill);
    area.attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
    labels.push(labelOf(section.name, fill, edges, upper, lower));
  });
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  drawAreaLabels(frame, labels, right, top, floor);
}

interface AreaLabel {
  name: string;
  fill: string;
  /** Point in the area, at three quarters of the time in which it holds heads. */
  x: number;
  y: number;
}

function labelOf(
  name: string,
  fill: string,
  edges: readonly number[],
  upper: readonly number[],
  lower: readonly number[],
): AreaLabel {
  const solid = upper.map((_, bin) => bin).filter((bin) => lower[bin]! - upper[bin]! > 0.5);
  const late = solid.slice(Math.floor(solid.length * 0.6));
  let best = late[0] ?? 0;
  for (const bin of late) if (lower[bin]! - upper[bin]! > lower[best]! - upper[best]!) best = bin;
  return { name, fill, x: (edges[best]! + edges[best + 1]!) / 2, y: (upper[best]! + lower[best]!) / 2 };
}

function sectionFill(frame: ChartFrame, index: number): string {
  const colour = frame.colour(FILLS[index % FILLS.length]!);
  const texture = TEXTURES[index % TEXTURES.length]!;
  return textureFill(frame.defs, frame.id(`section-${index}`), texture, colour, frame.colour("muted"));
}

/** Names in the right gutter, each with a sample of its fill and a thin line to a point in its area. */
function drawAreaLabels(
  frame: ChartFrame,
  labels: readonly AreaLabel[],
  right: number,
  top: number,
  floor: number,
): void {
  const places = spreadLabels(
    labels.map((label) => label.y),
    20,
    top + 8,
    floor - 6,
  );
  labels.forEach((label, i) => {
    const y = places[i]!;
    const ink = frame.colour("ink");
    const lead = frame.body
      .append("path")
      .attr("d", `M${label.x.toFixed(1)},${label.y.toFixed(1)}L${right + 2},${y.toFixed(1)}h6`);
    lead.attr("fill", "none").attr("stroke", ink).attr("stroke-width", 0.8);
    frame.body
      .append("circle")
      .attr("cx", label.x.toFixed(1))
      .attr("cy", label.y.toFixed(1))
      .attr("r", 2)
      .attr("fill", ink);
    const sample = frame.body
      .append("rect")
      .attr("x", right + 9)
      .attr("y", (y - 6).toFixed(1))
      .attr("width", 12)
      .attr("height", 12);
    sample.attr("fill", label.fill).attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
    const [line = ""] = wrapText(label.name, RIGHT_GUTTER - 28, 11, 1);
    drawText(frame.body, right + 26, y + 4, textWidth(line, 11) > 0 ? line : "unnamed");
  });
}
