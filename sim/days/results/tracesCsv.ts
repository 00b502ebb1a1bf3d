import { type DayRecord, STATES, type StateTrace, type StepTrace, type Traces } from "../../day/engine/index.ts";
import { does } from "../../text/kinds/index.ts";
import { clockCells, clockColumns } from "./clockCells.ts";
import { column, UNIT_OF_ROW, VARIANT_COLUMN } from "./column.ts";
import { type CsvCell, csvParts, headerOf } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";
import { stateSpans, stepSpans } from "./traceSpans.ts";

const AMOUNT = UNIT_OF_ROW;

export const TRACES_COLUMNS = [
  VARIANT_COLUMN,
  column(
    "kind",
    "text",
    "",
    "queue (before or in a stage), wip (in a section), out, arrived, hung, entered (heads that came into a dwell stage so far), crew busy, crew present, or state.",
  ),
  column("trace", "text", "", "The stage, section or crew."),
  column("state", "text", "", "What the positions were doing; in rows of kind state only."),
  column(
    "unit",
    "text",
    "",
    "Unit of value, low, high and mean in this row: heads, crates, people or position-seconds.",
  ),
  column("time_s", "number", "s after day start", "Time of a step, or of the beginning of a bin."),
  ...clockColumns("", "The same as a clock time"),
  column(
    "bin_s",
    "number",
    "s",
    "Length of the bin; neighbours that are all alike are one long bin. Empty for a step.",
  ),
  column(
    "value",
    "number",
    AMOUNT,
    "Value from this step on; in rows of kind state, position-seconds in the bin, to a thousandth.",
  ),
  column("low", "number", AMOUNT, "Least value in the bin."),
  column("high", "number", AMOUNT, "Greatest value in the bin."),
  column("mean", "number", AMOUNT, "Time average over the bin, to a thousandth."),
];

/**
 * The traces of each variant's first day in long form, in parts. `time_s`: seconds after the day's start, of a step or of the
 * beginning of a bin of `bin_s` seconds. A step (exact trace) has `value`; a bin has `low`, `high` and `mean`; a row of
 * kind "state" has the position-seconds spent in `state` during the bin as its `value` (rows of 0 are left out). A day has
 * at most 256 bins (`stepSpans`), and those that hold the same are one row: results.json has finer ones. Null when no day
 * has traces.
 */
export function tracesCsv(results: StudyResults): Generator<string> | null {
  const traced = results.variants.some(({ day }) => day.traces !== null);
  return traced ? csvParts(headerOf(TRACES_COLUMNS), rows(results)) : null;
}

function* rows(results: StudyResults): Generator<CsvCell[]> {
  for (const { name, day } of results.variants) {
    if (day.traces === null) continue;
    for (const [kind, trace, state, unit, time, ...amounts] of traceRows(day, day.traces)) {
      const clock = clockCells(day.startClockSeconds + time);
      yield [name, kind, trace, state, unit, time, ...clock, ...amounts];
    }
  }
}

/** Kind, name, state and unit; seconds after the day's start, of the bin; value, low, high, mean. */
type TraceRow = [string, string, string | null, string, number, ...(number | null)[]];

function traceRows({ stages }: DayRecord, traces: Traces): TraceRow[] {
  const crateSteps = new Set(stages.filter((stage) => does(stage, "handle crates")).map(({ name }) => name));
  const waiting = (trace: StepTrace) => (crateSteps.has(trace.name) ? "crates" : "heads");
  return [
    ...traces.queues.flatMap((trace) => stepRows("queue", waiting(trace), trace)),
    ...traces.wip.flatMap((trace) => stepRows("wip", "heads", trace)),
    ...stepRows("out", "heads", traces.out),
    ...stepRows("arrived", "heads", traces.arrived),
    ...stepRows("hung", "heads", traces.hung),
    ...traces.entered.flatMap((trace) => stepRows("entered", "heads", trace)),
    ...traces.crews.flatMap(({ busy, present }) => [
      ...stepRows("crew busy", "people", busy),
      ...stepRows("crew present", "people", present),
    ]),
    ...traces.states.flatMap(stateRows),
  ];
}

function stepRows(kind: string, unit: string, trace: StepTrace): TraceRow[] {
  if (trace.kind === "exact") {
    return trace.times.map((time, row) => {
      return [kind, trace.name, null, unit, time, null, trace.values[row]!, null, null, null];
    });
  }
  return stepSpans(trace).map(({ from, seconds, low, high, mean }) => {
    return [kind, trace.name, null, unit, from, seconds, null, low, high, thousandth(mean)];
  });
}

function stateRows(trace: StateTrace): TraceRow[] {
  const spans = STATES.flatMap((name, state) =>
    stateSpans(trace, state, STATES.length).map((span) => ({ name, ...span })),
  );
  // By time, and at one time in the order of the states: sorting keeps what is equal in order.
  spans.sort((a, b) => a.from - b.from);
  return spans.map(({ name, from, seconds, value }): TraceRow => {
    return ["state", trace.name, name, "position-seconds", from, seconds, thousandth(value), null, null, null];
  });
}

function thousandth(value: number): number {
  return Math.round(value * 1000) / 1000;
}
