import { scaleLinear } from "d3";
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
  type Paint,
  type PauseBand,
  spreadLabels,
  type TimeScale,
  textureFill,
  textWidth,
  timePlot,
  timeScale,
  wrapText,
} from "../frame/index.ts";
import { stepPath } from "../marks/index.ts";

/** A cumulative count: `heads[i]` holds from `seconds[i]` on (`step`), or runs straight to the next point (`straight`). */
export interface HeadsLine {
  label: string;
  role: "out" | "chiller" | "hung" | "arrived" | "target";
  shape: "step" | "straight";
  seconds: readonly number[];
  heads: readonly number[];
}

export interface HeadsOutColumns extends ChartWords {
  startClockSeconds: number;
  endSeconds: number;
  /** End of the last shift; what lies beyond is marked as overtime. */
  shiftEndSeconds: number;
  pauses: readonly PauseBand[];
  lines: readonly HeadsLine[];
}

const LOOKS: Record<HeadsLine["role"], { paint: Paint; width: number; dash: string }> = {
  hung: { paint: "line", width: 2.4, dash: "" },
  chiller: { paint: "series3", width: 1.8, dash: "9 2 2 2" },
  out: { paint: "series2", width: 1.8, dash: "" },
  arrived: { paint: "muted", width: 1.6, dash: "" },
  target: { paint: "limit", width: 1.8, dash: "7 3" },
};
const GUTTER = 50;
const RIGHT_GUTTER = 138;
const HEIGHT = 260;

/** Heads arrived, hung, into the chiller and out, and the target, all counted from the day's start, over the clock. */
export function headsOutChart(columns: HeadsOutColumns, context: ChartContext): SVGSVGElement {
  const largest = Math.max(0, ...columns.lines.flatMap((curve) => curve.heads));
  if (largest === 0) return emptyChart(columns, "No head arrived or left on this day.", context);
  const frame = chartFrame(columns, context);
  const top = frame.top + 36;
  const floor = top + HEIGHT;
  const time = timeScale(frame, columns.endSeconds, frame.left + GUTTER, frame.right - RIGHT_GUTTER);
  const heads = scaleLinear().domain([0, largest]).nice().range([floor, top]);
  const [left, right] = time.range() as [number, number];
  timePlot(frame, top, floor);
  drawOvertime(frame, columns, time, top, floor);
  drawPauses(frame.body, columns.pauses, time, top, floor, frame.colour("pause"), frame.colour("muted"));
  drawClockGrid(frame.body, time, columns.startClockSeconds, top, floor, frame.colour);
  drawLeftAxis(
    frame.body,
    heads,
    { kind: "number", label: "counted since the day's start", unit: "heads" },
    left,
    right,
    top - 24,
    frame.colour,
  );
  for (const curve of columns.lines) drawLine(frame, curve, columns.endSeconds, time, heads);
  drawEndLabels(frame, columns.lines, time, heads, top, floor);
  return frame.finish(drawClockAxis(frame.body, time, columns.startClockSeconds, floor, frame.colour));
}

function drawOvertime(frame: ChartFrame, columns: HeadsOutColumns, time: TimeScale, top: number, floor: number): void {
  if (!(columns.endSeconds > columns.shiftEndSeconds)) return;
  const x = time(columns.shiftEndSeconds);
  const fill = textureFill(frame.defs, frame.id("overtime"), "falling", frame.colour("paper"), frame.colour("grid"));
  const band = frame.body
    .append("rect")
    .attr("x", x.toFixed(1))
    .attr("y", top)
    .attr("height", floor - top)
    .attr("fill", fill);
  band.attr("width", (time(columns.endSeconds) - x).toFixed(1));
  frame.body
    .append("path")
    .attr("d", `M${x.toFixed(1)},${top}V${floor}`)
    .attr("stroke", frame.colour("rule"));
  const room = time(columns.endSeconds) - x;
  const label = ["after the last shift", "overtime"].find((text) => textWidth(text, 11) + 8 < room);
  if (label === undefined) return;
  const style = { anchor: "middle", fill: frame.colour("muted"), halo: frame.colour("paper") } as const;
  drawText(frame.body, x + room / 2, floor - 8, label, style);
}

function drawLine(frame: ChartFrame, curve: HeadsLine, endSeconds: number, time: TimeScale, heads: TimeScale): void {
  const look = LOOKS[curve.role];
  const X = curve.seconds.map(time);
  const Y = curve.heads.map(heads);
  const straight = X.map((x, i) => `${i === 0 ? "M" : "L"}${x.toFixed(1)},${Y[i]!.toFixed(1)}`).join("");
  const path = frame.body
    .append("path")
    .attr("d", curve.shape === "step" ? stepPath(X, Y, time(endSeconds)) : straight);
  path.attr("fill", "none").attr("stroke", frame.colour(look.paint)).attr("stroke-width", look.width);
  if (look.dash !== "") path.attr("stroke-dasharray", look.dash);
}

/** Whether the heads hung are fewer where the curve ends, and run on below it. */
function isAbove(curve: HeadsLine, lines: readonly HeadsLine[]): boolean {
  const hung = lines.find(({ role }) => role === "hung");
  const last = hung?.seconds.findLastIndex((seconds) => seconds <= curve.seconds.at(-1)!) ?? -1;
  return last >= 0 && hung!.heads[last]! < curve.heads.at(-1)!;
}

/**
 * A target that ends early is named inside the plot: on the side of its end on which the heads hung do not run. The others are
 * named in the right gutter.
 */
function drawEndLabels(
  frame: ChartFrame,
  lines: readonly HeadsLine[],
  time: TimeScale,
  heads: TimeScale,
  top: number,
  floor: number,
): void {
  const right = time.range()[1]!;
  const inside = (curve: HeadsLine) => time(curve.seconds.at(-1) ?? 0) + textWidth(curve.label, 11) + 14 < right;
  const early = lines.filter((curve) => curve.role === "target" && inside(curve));
  const late = lines.filter((curve) => !early.includes(curve));
  for (const curve of early) {
    const [x, y] = [time(curve.seconds.at(-1)!), heads(curve.heads.at(-1)!)];
    const style = { fill: frame.colour(LOOKS[curve.role].paint), halo: frame.colour("paper") };
    if (isAbove(curve, lines)) drawText(frame.body, x - 8, y - 7, curve.label, { ...style, anchor: "end" });
    else drawText(frame.body, x + 8, y + 16, curve.label, style);
  }
  const wishes = late.map((curve) => heads(curve.heads.at(-1) ?? 0));
  const places = spreadLabels(wishes, 32, top + 6, floor - 12);
  late.forEach((curve, i) => {
    const style = { fill: frame.colour(LOOKS[curve.role].paint), bold: curve.role === "hung" };
    wrapText(curve.label, RIGHT_GUTTER - 10, 11, 2).forEach((text, row) => {
      drawText(frame.body, right + 9, places[i]! + 4 + row * 14, text, style);
    });
  });
}
