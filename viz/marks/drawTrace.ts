import type { DayFrame, Group, TimeScale } from "../frame/index.ts";
import { stepBandPath, stepPath } from "./stepPaths.ts";

/** A step function as columns: exact change points, or low, high and mean by bin. Seconds after the day's start. */
export type TraceColumns =
  | { kind: "exact"; times: readonly number[]; values: readonly number[] }
  | { kind: "binned"; binSeconds: number; low: readonly number[]; high: readonly number[]; mean: readonly number[] };

/** A trace as a line; where it is binned, over a band from the lowest to the highest value of each bin. */
export function drawTrace(frame: DayFrame, group: Group, trace: TraceColumns, value: TimeScale): void {
  const { time } = frame;
  const end = time(frame.scene.endSeconds);
  const line = (path: string) =>
    group
      .append("path")
      .attr("d", path)
      .attr("fill", "none")
      .attr("stroke", frame.colour("line"))
      .attr("stroke-width", 1.3);
  if (trace.kind === "exact") {
    line(stepPath(trace.times.map(time), trace.values.map(value), end));
    return;
  }
  const starts = trace.mean.map((_, bin) => bin * trace.binSeconds);
  const edges = [...starts.map(time), end];
  const band = stepBandPath(edges, trace.high.map(value), trace.low.map(value));
  group.append("path").attr("d", band).attr("fill", frame.colour("range"));
  line(stepPath(starts.map(time), trace.mean.map(value), end));
}
