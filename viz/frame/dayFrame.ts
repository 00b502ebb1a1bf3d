import { scaleLinear } from "d3";
import { type ChartContext, type ChartFrame, type ChartWords, chartFrame } from "./chartFrame.ts";
import { drawClockAxis, drawClockGrid, drawPauses, type PauseBand, type TimeScale } from "./clockAxis.ts";

/** What every picture over the clock of a day says of that day. */
export interface DayScene {
  startClockSeconds: number;
  /** Where the clock axis ends, seconds after the day's start. */
  endSeconds: number;
  pauses: readonly PauseBand[];
}

/** A picture over the clock: draw `dayPlot` first, the data into it, then call `finishDay`. */
export interface DayFrame extends ChartFrame {
  scene: DayScene;
  time: TimeScale;
  /** Ends of the clock axis in pixels. */
  plot: { left: number; right: number };
}

/** Room for half a clock time. */
const NARROW_GUTTERS = { left: 8, right: 8 };

/**
 * The words in place and the clock of the day laid out between two gutters (pixels), which a narrow picture has of its own. The axis is noted on the picture's
 * root, so that a page can find the time under a pointer and draw one cursor through all pictures of a day.
 */
export function dayFrame(
  columns: ChartWords & DayScene,
  context: ChartContext,
  wide: { left: number; right: number },
  narrow: { left: number; right: number } = NARROW_GUTTERS,
): DayFrame {
  const frame = chartFrame(columns, context);
  const gutters = frame.narrow ? narrow : wide;
  const plot = { left: frame.left + gutters.left, right: frame.right - gutters.right };
  const time = scaleLinear().domain([0, columns.endSeconds]).range([plot.left, plot.right]);
  frame.svg.attr("data-time-left", plot.left).attr("data-time-right", plot.right);
  frame.svg.attr("data-time-end", columns.endSeconds);
  return { ...frame, scene: columns, time, plot };
}

/**
 * The ground of a plot over the clock, or of one of several below each other: pauses, and the grid over them. Pauses may
 * stand out above and below; strips that fill the plot go without a grid. A page's cursor reaches from the first plot to the last.
 */
export function drawDayPlot(
  frame: DayFrame,
  top: number,
  bottom: number,
  { above = 0, below = 0, grid = true }: { above?: number; below?: number; grid?: boolean } = {},
): void {
  const { scene, svg, time } = frame;
  if (svg.attr("data-time-top") === null) svg.attr("data-time-top", Math.round(top));
  svg.attr("data-time-bottom", Math.round(bottom));
  drawPauses(frame, scene.pauses, time, top - above, bottom + below);
  if (grid) drawClockGrid(frame, time, scene.startClockSeconds, top, bottom);
}

/** The clock axis at `y` and the notes below it. */
export function finishDay(frame: DayFrame, y: number, ...notes: readonly string[]): SVGSVGElement {
  return frame.finish(drawClockAxis(frame, frame.time, frame.scene.startClockSeconds, y), ...notes);
}
