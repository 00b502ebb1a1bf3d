import { STATES, type StateTrace, type StepTrace, type Traces } from "../engine/index.ts";
import { type Cell, csvText } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";

const HEADER = ["variant", "kind", "trace", "state", "time_s", "bin_s", "value", "low", "high", "mean"];

/**
 * The traces of each variant's first day in long form. `time_s`: seconds after the day's start, of a step or of the
 * beginning of a bin of `bin_s` seconds. A step (exact trace) has `value`; a bin has `low`, `high` and `mean`; a row of
 * kind "state" has the position-seconds spent in `state` during the bin as its `value` (rows of 0 are left out). Null
 * when no day has traces.
 */
export function tracesCsv(results: StudyResults): string | null {
  const rows = results.variants.flatMap(({ name, day }) => (day.traces === null ? [] : traceRows(name, day.traces)));
  return rows.length === 0 ? null : csvText(HEADER, rows);
}

function traceRows(variant: string, traces: Traces): Cell[][] {
  return [
    ...traces.queues.flatMap((trace) => stepRows(variant, "queue", trace)),
    ...traces.wip.flatMap((trace) => stepRows(variant, "wip", trace)),
    ...stepRows(variant, "out", traces.out),
    ...stepRows(variant, "arrived", traces.arrived),
    ...traces.states.flatMap((trace) => stateRows(variant, trace)),
  ];
}

function stepRows(variant: string, kind: string, trace: StepTrace): Cell[][] {
  if (trace.kind === "exact") {
    return trace.times.map((time, row) => {
      return [variant, kind, trace.name, null, time, null, trace.values[row]!, null, null, null];
    });
  }
  const { name, binSeconds, low, high, mean } = trace;
  return mean.map((_, bin) => {
    return [variant, kind, name, null, bin * binSeconds, binSeconds, null, low[bin]!, high[bin]!, mean[bin]!];
  });
}

function stateRows(variant: string, { name, binSeconds, seconds }: StateTrace): Cell[][] {
  return seconds.flatMap((value, index): Cell[][] => {
    if (value === 0) return [];
    const bin = Math.floor(index / STATES.length);
    const state = STATES[index % STATES.length]!;
    return [[variant, "state", name, state, bin * binSeconds, binSeconds, value, null, null, null]];
  });
}
