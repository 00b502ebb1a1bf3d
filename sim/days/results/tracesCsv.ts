import { STATES, type StateTrace, type StepTrace, type Traces } from "../../day/engine/index.ts";
import { column, VARIANT_COLUMN } from "./column.ts";
import { type CsvCell, csvParts, headerOf } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";
import { stateSpans, stepSpans } from "./traceSpans.ts";

const AMOUNT =
  "heads; crates for a step of live handling; people in rows about a crew; position-seconds in rows of kind state";

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
  column("time_s", "number", "s after day start", "Time of a step, or of the beginning of a bin."),
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
  for (const { name, day } of results.variants) if (day.traces !== null) yield* traceRows(name, day.traces);
}

function traceRows(variant: string, traces: Traces): CsvCell[][] {
  return [
    ...traces.queues.flatMap((trace) => stepRows(variant, "queue", trace)),
    ...traces.wip.flatMap((trace) => stepRows(variant, "wip", trace)),
    ...stepRows(variant, "out", traces.out),
    ...stepRows(variant, "arrived", traces.arrived),
    ...stepRows(variant, "hung", traces.hung),
    ...traces.entered.flatMap((trace) => stepRows(variant, "entered", trace)),
    ...traces.crews.flatMap(({ busy, present }) => [
      ...stepRows(variant, "crew busy", busy),
      ...stepRows(variant, "crew present", present),
    ]),
    ...traces.states.flatMap((trace) => stateRows(variant, trace)),
  ];
}

function stepRows(variant: string, kind: string, trace: StepTrace): CsvCell[][] {
  if (trace.kind === "exact") {
    return trace.times.map((time, row) => {
      return [variant, kind, trace.name, null, time, null, trace.values[row]!, null, null, null];
    });
  }
  return stepSpans(trace).map(({ from, seconds, low, high, mean }) => {
    return [variant, kind, trace.name, null, from, seconds, null, low, high, thousandth(mean)];
  });
}

function stateRows(variant: string, trace: StateTrace): CsvCell[][] {
  const spans = STATES.flatMap((name, state) =>
    stateSpans(trace, state, STATES.length).map((span) => ({ name, ...span })),
  );
  // By time, and at one time in the order of the states: sorting keeps what is equal in order.
  spans.sort((a, b) => a.from - b.from);
  return spans.map(({ name, from, seconds, value }): CsvCell[] => {
    return [variant, "state", trace.name, name, from, seconds, thousandth(value), null, null, null];
  });
}

function thousandth(value: number): number {
  return Math.round(value * 1000) / 1000;
}
