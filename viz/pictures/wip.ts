import { max, scaleLinear } from "d3";
import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import {
  type ChartContext,
  type ChartWords,
  type DayFrame,
  type DayScene,
  dayFrame,
  drawDayPlot,
  drawLeftAxis,
  drawText,
  emptyChart,
  FILLS,
  finishDay,
  isolated,
  spreadLabels,
  type Texture,
  textureFill,
  textWidth,
  wrapText,
} from "../frame/index.ts";
import { drawKey, stepBandPath } from "../marks/index.ts";
import { binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
import { dayScene, dayWords } from "./dayScene.ts";
import { meansOnly, plain, scene, type TimeReadings } from "./timeReadings.ts";

export interface WipSection {
  name: string;
  /** Mean heads in the section by time bin. */
  values: readonly number[];
}

export interface WipColumns extends ChartWords, DayScene {
  binSeconds: number;
  /** One stacked panel each, first one on top; sections stack upwards in the order given. */
  panels: readonly { name: string; sections: readonly WipSection[] }[];
}

const PANEL = 170;

const GUTTER = 46;

const RIGHT_GUTTER = 118;

const TEXTURES: readonly Texture[] = ["plain", "rising", "dots", "level", "cross", "falling"];

interface AreaLabel {
  name: string;
  fill: string;
  /** Where the name is written, or where a line from the gutter points to. */
  x: number;
  y: number;
  inside: boolean;
}

/** Work in process by section of a variant's first day. A section that dwarfs the others (a chiller) gets its own panel. */
export function wipView(results: StudyResults, variant: VariantResults): WipColumns {
  const { day } = variant;
  const traces = (day.traces?.wip ?? []).map((trace) => ({
    ...binnedTrace(trace, drawingBinSeconds(day.finishSeconds)),
    name: isolated(trace.name),
  }));
  const binSeconds = traces[0]?.binSeconds ?? drawingBinSeconds(day.finishSeconds);
  const sections = traces.map(({ name, mean }) => ({ name, values: mean }));
  const alive = sections.filter((section) => section.values.some((value) => value > 0));
  const peaks = day.sections.map((section) => `${isolated(section.name)} ${formatDecimals(section.wip.max, 0)}`);
  return {
    ...dayScene(results, variant),
    title: "Heads on the line by section",
    caption: "A section that fills up feeds a slower one; one that empties gets too few heads",
    subtitle: `Work in process: mean number of heads in each ${formatDuration(binSeconds)}, stacked, ${dayWords(results, variant)}`,
    description: peaks.length === 0 ? "No section recorded." : `Most heads at one time: ${peaks.join(", ")}.`,
    binSeconds,
    panels: panelsOf(alive),
  };
}

function panelsOf(sections: readonly WipSection[]): WipColumns["panels"] {
  const peak = (section: WipSection) => Math.max(...section.values);
  const dwarfs = sections.filter((section) => {
    const others = sections.filter((other) => other !== section).reduce((sum, other) => sum + peak(other), 0);
    return others > 0 && peak(section) > 4 * others;
  });
  const rest = sections.filter((section) => !dwarfs.includes(section));
  if (dwarfs.length === 0) return [{ name: "on the line", sections }];
  return [
    { name: `on the line without ${dwarfs[0]!.name}`, sections: rest },
    { name: `in ${dwarfs[0]!.name} (on its own scale)`, sections: dwarfs },
  ];
}

/** Heads in each section over the clock, stacked, every section labelled beside its own area. */
export function wipChart(columns: WipColumns, context: ChartContext): SVGSVGElement {
  const panels = columns.panels.filter((panel) => panel.sections.length > 0);
  if (panels.length === 0) return emptyChart(columns, "No section of the line held any head on this day.", context);
  const frame = dayFrame(columns, context, { left: GUTTER, right: RIGHT_GUTTER }, { left: GUTTER, right: 8 });
  const edges = panels[0]!.sections[0]!.values.map((_, bin) => frame.time(bin * columns.binSeconds));
  edges.push(frame.plot.right);
  const sections = panels.flatMap((panel) => panel.sections);
  const fills = sections.map((_, index) => sectionFill(frame, index));
  // A narrow picture has no room beside an area for its name.
  const key = sections.map(({ name }, index) => ({ name, fill: fills[index]! }));
  let top = frame.narrow ? drawKey(frame, key, frame.top + 4) : frame.top;
  let first = 0;
  for (const panel of panels) {
    drawStackPanel(frame, panel, edges, top + 34, fills.slice(first));
    first += panel.sections.length;
    top += PANEL + 46;
  }
  return finishDay(frame, top - 12);
}

function drawStackPanel(
  frame: DayFrame,
  panel: WipColumns["panels"][number],
  edges: readonly number[],
  top: number,
  fills: readonly string[],
): void {
  const floor = top + PANEL;
  const totals = edges.slice(1).map((_, bin) => panel.sections.reduce((sum, section) => sum + section.values[bin]!, 0));
  const heads = scaleLinear()
    .domain([0, (max(totals) ?? 0) || 1])
    .nice()
    .range([floor, top]);
  const { left, right } = frame.plot;
  drawDayPlot(frame, top, floor);
  drawLeftAxis(frame, heads, { kind: "number", label: panel.name, unit: "heads" }, { left, right, labelY: top - 20 });
  const labels: AreaLabel[] = [];
  const below = new Array<number>(totals.length).fill(0);
  panel.sections.forEach((section, index) => {
    const lower = below.map(heads);
    section.values.forEach((value, bin) => {
      below[bin]! += value;
    });
    const upper = below.map(heads);
    const fill = fills[index]!;
    const area = frame.body
      .append("path")
      .attr("d", stepBandPath(edges, upper, lower))
      .attr("fill", fill);
    area.attr("stroke", frame.colour("muted")).attr("stroke-width", 0.6);
    labels.push(labelOf(section.name, fill, edges, upper, lower));
  });
  frame.body.append("path").attr("d", `M${left},${floor}H${right}`).attr("stroke", frame.colour("rule"));
  if (!frame.narrow) drawAreaLabels(frame, labels, top, floor);
}

/** Finds the place where the area leaves most height over the width of its name; under 17 px the name goes to the gutter. */
function labelOf(
  name: string,
  fill: string,
  edges: readonly number[],
  upper: readonly number[],
  lower: readonly number[],
): AreaLabel {
  const width = textWidth(name, 12, true) + 10;
  let best = { room: 0, x: 0, y: 0 };
  for (let from = 0; from < upper.length; from++) {
    let to = from;
    while (to + 1 < upper.length && edges[to + 1]! - edges[from]! < width) to++;
    if (edges[to + 1]! - edges[from]! < width) break;
    const roof = Math.max(...upper.slice(from, to + 1));
    const ground = Math.min(...lower.slice(from, to + 1));
    if (ground - roof > best.room)
      best = { room: ground - roof, x: (edges[from]! + edges[to + 1]!) / 2, y: (roof + ground) / 2 };
  }
  if (best.room >= 17) return { name, fill, x: best.x, y: best.y, inside: true };
  return { name, fill, ...thickest(edges, upper, lower), inside: false };
}

/** Middle of the thickest bin in the later half of the time in which the area is there. */
function thickest(
  edges: readonly number[],
  upper: readonly number[],
  lower: readonly number[],
): { x: number; y: number } {
  const solid = upper.map((_, bin) => bin).filter((bin) => lower[bin]! - upper[bin]! > 0.5);
  const late = solid.slice(Math.floor(solid.length / 2));
  let best = late[0] ?? 0;
  for (const bin of late) if (lower[bin]! - upper[bin]! > lower[best]! - upper[best]!) best = bin;
  return { x: (edges[best]! + edges[best + 1]!) / 2, y: (upper[best]! + lower[best]!) / 2 };
}

function sectionFill(frame: DayFrame, index: number): string {
  const colour = frame.colour(FILLS[index % FILLS.length]!);
  const texture = TEXTURES[index % TEXTURES.length]!;
  return textureFill(frame.defs, frame.id(`section-${index}`), texture, colour, frame.colour("muted"));
}

function drawAreaLabels(frame: DayFrame, labels: readonly AreaLabel[], top: number, floor: number): void {
  const { right } = frame.plot;
  const ink = frame.colour("ink");
  for (const label of labels.filter((each) => each.inside)) {
    drawText(frame.body, label.x, label.y + 4, label.name, {
      anchor: "middle",
      size: 12,
      bold: true,
      halo: frame.colour("paper"),
    });
  }
  const outside = labels.filter((each) => !each.inside);
  const wishes = outside.map((label) => label.y);
  const places = spreadLabels(wishes, 20, top + 8, floor - 6);
  outside.forEach((label, i) => {
    const y = places[i]!;
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
    drawText(frame.body, right + 26, y + 4, line);
  });
}

export function wipReadings(columns: WipColumns): TimeReadings {
  const sections = columns.panels.flatMap((panel) => panel.sections);
  return {
    ...scene(columns),
    series: sections.map(({ name, values }) => plain(name, "heads", meansOnly(columns.binSeconds, values))),
  };
}
