import type { Group } from "../frame/index.ts";

/** A span of which a part lies inside, and its middle. */
export interface TwoTone {
  low: number;
  high: number;
  insideLow: number;
  insideHigh: number;
  mean: number;
}

export interface TwoToneFills {
  outside: string;
  inside: string;
  /** Of the borders and of the line at the mean. */
  ink: string;
}

/** Pixels from top to bottom. */
const HEIGHT = 16;

/** A level bar from low to high about `y`, its inner part in a fill of its own, an upright line at the mean. */
export function drawTwoTone(group: Group, x: (value: number) => number, bar: TwoTone, y: number, fills: TwoToneFills) {
  const part = (low: number, high: number, fill: string) => {
    const rect = group
      .append("rect")
      .attr("x", px(x(low)))
      .attr("y", px(y - HEIGHT / 2));
    rect.attr("width", px(Math.max(0.5, x(high) - x(low)))).attr("height", HEIGHT);
    rect.attr("fill", fill).attr("stroke", fills.ink).attr("stroke-width", 0.8);
  };
  part(bar.low, bar.high, fills.outside);
  part(bar.insideLow, bar.insideHigh, fills.inside);
  const line = group.append("path").attr("d", `M${px(x(bar.mean))},${px(y - HEIGHT / 2 - 3)}v${HEIGHT + 6}`);
  line.attr("stroke", fills.ink).attr("stroke-width", 2);
}

function px(value: number): number {
  return Math.round(value * 10) / 10;
}
