import type { Group } from "../frame/index.ts";

export interface IntervalStyle {
  stroke: string;
  /** Colour of the page: fills an open dot. */
  paper: string;
  filled: boolean;
}

/** A level bar from `low` to `high` with end caps and a dot at `mean`, pixels along x; without low and high just the dot. */
export function drawLevelInterval(
  group: Group,
  mean: number,
  low: number | null,
  high: number | null,
  y: number,
  style: IntervalStyle,
): void {
  if (low !== null && high !== null) {
    const path = `M${px(low)},${y - 4}v8M${px(low)},${y}H${px(high)}M${px(high)},${y - 4}v8`;
    group.append("path").attr("d", path).attr("stroke", style.stroke).attr("stroke-width", 1.8).attr("fill", "none");
  }
  drawDot(group, mean, y, style);
}

/** The same, upright: pixels along y. */
export function drawUprightInterval(
  group: Group,
  x: number,
  mean: number,
  low: number | null,
  high: number | null,
  style: IntervalStyle,
): void {
  if (low !== null && high !== null) {
    const path = `M${px(x - 4)},${px(low)}h8M${px(x)},${px(low)}V${px(high)}M${px(x - 4)},${px(high)}h8`;
    group.append("path").attr("d", path).attr("stroke", style.stroke).attr("stroke-width", 1.6).attr("fill", "none");
  }
  drawDot(group, x, mean, style);
}

function drawDot(group: Group, x: number, y: number, style: IntervalStyle): void {
  group
    .append("circle")
    .attr("cx", px(x))
    .attr("cy", px(y))
    .attr("r", 4.5)
    .attr("fill", style.filled ? style.stroke : style.paper)
    .attr("stroke", style.stroke)
    .attr("stroke-width", 1.8);
}

function px(value: number): number {
  return Math.round(value * 10) / 10;
}
