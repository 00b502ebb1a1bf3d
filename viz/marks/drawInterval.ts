import type { Group } from "../frame/index.ts";

export interface IntervalStyle {
  stroke: string;
  /** Colour of the page: fills an open dot. */
  paper: string;
  filled: boolean;
}

/** A mean with the ends of its interval; null where there is none. */
export interface Ends {
  mean: number;
  low: number | null;
  high: number | null;
}

type Scale = (value: number) => number;

/** A level bar from `low` to `high` along the scale x, with end caps and a dot at `mean`; without low and high just the dot. */
export function drawLevelInterval(group: Group, x: Scale, ends: Ends, y: number, style: IntervalStyle): void {
  if (ends.low !== null && ends.high !== null) {
    const [low, high] = [x(ends.low), x(ends.high)];
    const path = `M${px(low)},${y - 4}v8M${px(low)},${y}H${px(high)}M${px(high)},${y - 4}v8`;
    group.append("path").attr("d", path).attr("stroke", style.stroke).attr("stroke-width", 1.8).attr("fill", "none");
  }
  drawDot(group, x(ends.mean), y, style);
}

/** The same, upright, along the scale y. */
export function drawUprightInterval(group: Group, x: number, y: Scale, ends: Ends, style: IntervalStyle): void {
  if (ends.low !== null && ends.high !== null) {
    const [low, high] = [y(ends.low), y(ends.high)];
    const path = `M${px(x - 4)},${px(low)}h8M${px(x)},${px(low)}V${px(high)}M${px(x - 4)},${px(high)}h8`;
    group.append("path").attr("d", path).attr("stroke", style.stroke).attr("stroke-width", 1.6).attr("fill", "none");
  }
  drawDot(group, x, y(ends.mean), style);
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
