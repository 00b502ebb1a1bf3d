import { scaleLinear } from "d3";
import type { ChartFrame } from "./chartFrame.ts";
import type { TimeScale } from "./clockAxis.ts";

/**
 * Seconds after the day's start over [left, right] pixels. Noted on the picture's root, so that a page can find the time
 * under a pointer and draw one cursor through all pictures of a day.
 */
export function timeScale(frame: ChartFrame, endSeconds: number, left: number, right: number): TimeScale {
  frame.svg.attr("data-time-left", left).attr("data-time-right", right).attr("data-time-end", endSeconds);
  return scaleLinear().domain([0, endSeconds]).range([left, right]);
}

/** Notes between which heights the plot over the clock lies: that far a cursor reaches. */
export function timePlot(frame: ChartFrame, top: number, bottom: number): void {
  frame.svg.attr("data-time-top", Math.round(top)).attr("data-time-bottom", Math.round(bottom));
}
