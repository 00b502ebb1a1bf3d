import { max, scaleLinear } from "d3";
import {
  type ChartContext,
  type ChartFrame,
  type ChartWords,
  chartFrame,
  drawBottomAxis,
  drawLeftAxis,
  drawText,
  emptyChart,
  spreadLabels,
  textureFill,
  textWidth,
} from "../frame/index.ts";

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
  const top = frame.top + (columns.overflowText === "" ? 60 : 74);
  const floor = top + HEIGHT;
  const [left, right] = [frame.left + GUTTER, frame.right - 20];
  const x = scaleLinear().domain([columns.fromSeconds, columns.toSeconds]).range([left, right]);
  const heads = scaleLinear()
    .domain([0, max(columns.bins, (bin) => bin.heads) || 1])
    .nice()
    .range([floor, top]);
  drawLeftAxis(
    frame.body,
    heads,
    { kind: "number", label: "in each bar", unit: "heads" },
    left,
    right,
    frame.top + 8,
    frame.colour,
  );
  const end = drawBottomAxis(frame.body, x, { kind: "duration", label: columns.label }, floor, floor, frame.colour);
  drawBars(frame, columns, x, heads);
  drawLimits(frame, columns, x, top, floor);
  drawText(frame.body, right, frame.top + 8, columns.beyondText, { anchor: "end", bold: true, size: 12 });
  if (columns.dayText !== "") drawText(frame.body, right, frame.top + 24, columns.dayText, { anchor: "end" });
  if (columns.overflowText !== "") drawText(frame.body, right, frame.top + 38, columns.overflowText, { anchor: "end" });
  return frame.finish(end);
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
