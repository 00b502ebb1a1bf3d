import type { ScaleLinear } from "d3";
import { formatClock } from "../../sim/text/units/index.ts";
import type { ChartFrame } from "./chartFrame.ts";
import { drawText, LINE_HEIGHT } from "./drawText.ts";
import { quantityTicks } from "./quantity.ts";
import { textWidth } from "./textWidth.ts";
import { wrapText } from "./wrapText.ts";

export type TimeScale = ScaleLinear<number, number>;

/** Full and half hours (or finer, coarser, as the room asks) between the ends of a time scale in seconds. */
export function clockTicksFor(scale: TimeScale, startClockSeconds: number) {
  const [low, high] = scale.domain() as [number, number];
  const [left, right] = scale.range() as [number, number];
  const count = Math.max(2, Math.floor((right - left) / 46));
  return quantityTicks({ kind: "clock", label: "", startClockSeconds }, low, high, count);
}

/** Faint upright lines at the ticks, to be drawn before the data. */
export function drawClockGrid(
  { body, colour }: ChartFrame,
  scale: TimeScale,
  startClockSeconds: number,
  top: number,
  bottom: number,
): void {
  for (const tick of clockTicksFor(scale, startClockSeconds)) {
    const x = scale(tick.value);
    body
      .append("path")
      .attr("d", `M${x.toFixed(1)},${top}V${bottom}`)
      .attr("stroke", colour("grid"));
  }
}

/** A time axis below `y`, with HH:MM and its name; returns the lower edge. */
export function drawClockAxis(
  { body, colour }: ChartFrame,
  scale: TimeScale,
  startClockSeconds: number,
  y: number,
): number {
  const [left, right] = scale.range() as [number, number];
  const axis = body.append("g");
  axis.append("path").attr("d", `M${left},${y}H${right}`).attr("stroke", colour("rule"));
  for (const tick of clockTicksFor(scale, startClockSeconds)) {
    const x = scale(tick.value);
    axis
      .append("path")
      .attr("d", `M${x.toFixed(1)},${y}v4`)
      .attr("stroke", colour("rule"));
    const [time = "", ...later] = tick.text.split(" ");
    drawText(axis, x, y + 16, time, { anchor: "middle", fill: colour("muted") });
    if (later.length > 0 && x < right - 130) {
      drawText(axis, x, y + 16 + LINE_HEIGHT, later.join(" "), { anchor: "middle", fill: colour("muted") });
    }
  }
  drawText(axis, right, y + 16 + LINE_HEIGHT, "clock time (h:min)", { anchor: "end", fill: colour("muted") });
  return y + 16 + LINE_HEIGHT + 4;
}

/** A planned pause, seconds after the day's start. */
export interface PauseBand {
  name: string;
  fromSeconds: number;
  toSeconds: number;
}

/** Pale bands through the chart, their names above it at `top - 4` where they fit without touching. */
export function drawPauses(
  { body, colour, narrow }: ChartFrame,
  pauses: readonly PauseBand[],
  scale: TimeScale,
  top: number,
  bottom: number,
): void {
  const [low, high] = scale.domain() as [number, number];
  const [left, right] = scale.range() as [number, number];
  let occupied = left - 20;
  for (const pause of pauses) {
    const from = Math.max(low, pause.fromSeconds);
    const to = Math.min(high, pause.toSeconds);
    if (!(to > from)) continue;
    const x = scale(from);
    const width = Math.max(1, scale(to) - x);
    body
      .append("rect")
      .attr("x", x.toFixed(1))
      .attr("y", top)
      .attr("width", width.toFixed(1))
      .attr("height", bottom - top)
      .attr("fill", colour("pause"));
    const [name = ""] = wrapText(pause.name, 120, 11, 1);
    const half = textWidth(name, 11) / 2;
    const middle = Math.min(Math.max(x + width / 2, left + half - 20), right - half);
    if (middle - half < occupied) continue;
    drawText(body, middle, top - 5, name, { anchor: "middle", fill: colour("muted") });
    occupied = middle + half + (narrow ? 1 : 8);
  }
}

/** "06:00" for a time in seconds after the day's start. */
export function clockAt(seconds: number, startClockSeconds: number): string {
  return formatClock(seconds + startClockSeconds);
}
