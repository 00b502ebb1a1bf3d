import type { StateTrace, StepTrace } from "../../day/engine/index.ts";

/** A stretch of time of a trace in bins: from, and how long, in seconds; low, high and time average over it. */
export interface StepSpan {
  from: number;
  seconds: number;
  low: number;
  high: number;
  mean: number;
}

/** A stretch of time with the position-seconds that were spent in one state during it. */
export interface StateSpan {
  from: number;
  seconds: number;
  value: number;
}

/** As many as a picture of the day has; a day of 8 hours then has bins of about 2 minutes. */
const MAX_BINS = 256;

/**
 * A trace in at most 256 bins: neighbours are joined by two, four, eight ..., lowest and highest value kept, so that no peak
 * is lost; and neighbours that hold one and the same value throughout become one span, however long.
 */
export function stepSpans(trace: Extract<StepTrace, { kind: "binned" }>): StepSpan[] {
  const { binSeconds, low, high } = trace;
  const spans: StepSpan[] = [];
  for (const [from, to] of joinedBins(low.length)) {
    const least = Math.min(...low.slice(from, to));
    const most = Math.max(...high.slice(from, to));
    const last = spans.at(-1);
    const seconds = (to - from) * binSeconds;
    if (last !== undefined && least === most && last.low === least && last.high === least) last.seconds += seconds;
    else spans.push({ from: from * binSeconds, seconds, low: least, high: most, mean: meanOver(trace, from, to) });
  }
  return spans;
}

/** The same for one state of a stage, `state` of `states`; nothing for bins without any of it, one span for equal ones. */
export function stateSpans({ binSeconds, seconds }: StateTrace, state: number, states: number): StateSpan[] {
  const spans: (StateSpan & { each: number })[] = [];
  for (const [from, to] of joinedBins(seconds.length / states)) {
    let each = 0;
    for (let bin = from; bin < to; bin++) each += seconds[bin * states + state]!;
    if (each === 0) continue;
    const last = spans.at(-1);
    const [start, length] = [from * binSeconds, (to - from) * binSeconds];
    if (last?.each === each && last.from + last.seconds === start) {
      last.seconds += length;
      last.value += each;
    } else spans.push({ from: start, seconds: length, value: each, each });
  }
  return spans.map(({ from, seconds: length, value }) => ({ from, seconds: length, value }));
}

/** First bin, and the one after the last, of each group of neighbours. */
function joinedBins(bins: number): [number, number][] {
  let many = 1;
  while (bins / many > MAX_BINS) many *= 2;
  return Array.from({ length: Math.ceil(bins / many) }, (_, group) => [
    group * many,
    Math.min(bins, (group + 1) * many),
  ]);
}

/** By time: the day may end within its last bin. */
function meanOver(trace: Extract<StepTrace, { kind: "binned" }>, from: number, to: number): number {
  const { binSeconds, endSeconds, mean } = trace;
  let [area, seconds] = [0, 0];
  for (let bin = from; bin < to; bin++) {
    const covered = Math.max(0, Math.min(endSeconds, (bin + 1) * binSeconds) - bin * binSeconds);
    area += mean[bin]! * covered;
    seconds += covered;
  }
  return seconds > 0 ? area / seconds : mean[from]!;
}
