import type { ScaleLinear } from "d3";
import type { ChartFrame } from "./chartFrame.ts";
import { drawText, LINE_HEIGHT } from "./drawText.ts";
import { type Quantity, quantityLabel, quantityTicks } from "./quantity.ts";
import { textWidth } from "./textWidth.ts";
import { wrapText } from "./wrapText.ts";

type Linear = ScaleLinear<number, number>;

function largestOf(scale: Linear): number {
  return Math.max(...scale.domain().map(Math.abs));
}

function ticksOf(scale: Linear, quantity: Quantity, spacing: number) {
  const [low, high] = scale.domain() as [number, number];
  const [a, b] = scale.range() as [number, number];
  return quantityTicks(quantity, low, high, Math.max(2, Math.floor(Math.abs(b - a) / spacing)));
}

/** Lines of a label that does not fit one; only a narrow picture has more. */
const NARROW_LABEL = 3;

/** Name and unit in `room` pixels: on several lines where the picture is narrow, else a long name is cut before its unit is. */
function fittedLabel({ narrow }: ChartFrame, quantity: Quantity, scale: Linear, room: number): string[] {
  const whole = quantityLabel(quantity, largestOf(scale));
  if (textWidth(whole, 11) <= room) return [whole];
  if (narrow) return wrapText(whole, room, 11, NARROW_LABEL);
  const [unit = ""] = wrapText(whole.slice(quantity.label.length), room / 2, 11, 1);
  const [name = ""] = wrapText(quantity.label, room - textWidth(unit, 11), 11, 1);
  return [name + unit];
}

/** Where a bottom axis lies, pixels. */
export interface BottomAxis {
  y: number;
  /** Grid lines reach up to here; default: none. */
  top?: number;
  /** For name and unit about the axis's middle; default: its length and a little. */
  labelRoom?: number;
}

/** A value axis along the bottom: grid, ticks, texts that do not touch, name and unit; returns the lower edge. */
export function drawBottomAxis(
  frame: ChartFrame,
  scale: Linear,
  quantity: Quantity,
  { y, top = y, labelRoom }: BottomAxis,
): number {
  const { body, colour } = frame;
  const [left, right] = scale.range() as [number, number];
  const axis = body.append("g");
  let occupied = Number.NEGATIVE_INFINITY;
  for (const tick of ticksOf(scale, quantity, 72)) {
    const x = scale(tick.value);
    axis
      .append("path")
      .attr("d", `M${x.toFixed(1)},${top}V${y + 4}`)
      .attr("stroke", colour("grid"));
    const half = textWidth(tick.text, 11) / 2;
    if (x - half < occupied + 6) continue;
    drawText(axis, x, y + 16, tick.text, { anchor: "middle", fill: colour("muted") });
    occupied = x + half;
  }
  axis.append("path").attr("d", `M${left},${y}H${right}`).attr("stroke", colour("rule"));
  const label = fittedLabel(frame, quantity, scale, labelRoom ?? right - left + 40);
  label.forEach((line, i) => {
    drawText(axis, (left + right) / 2, y + 32 + i * LINE_HEIGHT, line, { anchor: "middle", fill: colour("muted") });
  });
  return y + 36 + (label.length - 1) * LINE_HEIGHT;
}

/**
 * A value axis at the left: level grid lines to `right`, texts, name and unit lying above the axis with their last line at
 * `labelY`; pixels.
 */
export function drawLeftAxis(
  frame: ChartFrame,
  scale: Linear,
  quantity: Quantity,
  { left, right, labelY }: { left: number; right: number; labelY: number },
): void {
  const { body, colour } = frame;
  const axis = body.append("g");
  for (const tick of ticksOf(scale, quantity, 44)) {
    const y = scale(tick.value);
    axis
      .append("path")
      .attr("d", `M${left},${y.toFixed(1)}H${right}`)
      .attr("stroke", colour("grid"));
    drawText(axis, left - 6, y + 4, tick.text, { anchor: "end", fill: colour("muted") });
  }
  const label = fittedLabel(frame, quantity, scale, right - 12);
  label.forEach((line, i) => {
    drawText(axis, 12, labelY - (label.length - 1 - i) * LINE_HEIGHT, line, { fill: colour("muted") });
  });
}
