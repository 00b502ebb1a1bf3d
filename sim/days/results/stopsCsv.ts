import { type KillStop, type KillStopsRecord, MAX_KILL_STOPS } from "../../day/engine/index.ts";
import { clockCells, clockColumns } from "./clockCells.ts";
import { column, VARIANT_COLUMN } from "./column.ts";
import { type CsvCell, csvParts, headerOf } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";

const HEADS = "heads";

export const STOPS_COLUMNS = [
  VARIANT_COLUMN,
  column("stop", "whole number", "", "Number of the stop in the day; empty in the row about stops beyond the list."),
  ...clockColumns("began_", "When it began"),
  column("began_s", "number", "s after day start", "The same in seconds after the day's start."),
  column("length_s", "number", "s", "How long the kill line stood; in the row about stops beyond the list, together."),
  column(
    "cause",
    "text",
    "",
    "Why it stood at first: breakdown, chain stands, planned break, nobody there, full behind (no room further on), full vessel.",
  ),
  column("step", "text", "", "The step that stood; for full behind, the stage that held it up."),
  column("detail", "text", "", "Name of the breakdown or vessel, or what else is known."),
  column("further_causes", "text", "", "Causes that were added before it was over, as cause: step: detail."),
  column("stunned_heads", "whole number", HEADS, "Stunned and not yet stuck when it began."),
  column("stunned_most_heads", "whole number", HEADS, "The same, the most during the stop."),
  column("bleeding_heads", "whole number", HEADS, "Stuck and not yet through bleeding when it began."),
  column("bleeding_most_heads", "whole number", HEADS, "The same, the most during the stop."),
  column("caught_heads", "whole number", HEADS, "Heads that were stunned and not yet stuck at some time during it."),
  column(
    "longest_wait_s",
    "number",
    "s",
    "The longest wait of such a head from the end of stunning to the start of sticking (or until it was gone); 0 when there was none.",
  ),
  column(
    "never_stuck_heads",
    "whole number",
    HEADS,
    "Of these, heads that left the line or were left at the day's end without being stuck.",
  ),
  column(
    "started_again",
    "yes or no",
    "",
    "Whether the line started again; no means that nothing more came, or the day ended.",
  ),
];

export const STOPS_ROW = `one stop of the kill line on the first day (replication 0) of a variant whose day is kept whole, the first ${MAX_KILL_STOPS} of it; a last row counts the others`;

/** The stops of the kill line of each variant's first day, in parts; null when no day has a record of them. */
export function stopsCsv(results: StudyResults): Generator<string> | null {
  return recordsStops(results) ? csvParts(headerOf(STOPS_COLUMNS), rows(results)) : null;
}

export function recordsStops({ variants }: StudyResults): boolean {
  return variants.some(({ day }) => day.killStops !== null);
}

function* rows({ variants }: StudyResults): Generator<CsvCell[]> {
  for (const { name, day } of variants) {
    const { killStops, startClockSeconds } = day;
    if (killStops === null) continue;
    for (const [index, stop] of killStops.stops.entries()) yield [name, index + 1, ...cells(stop, startClockSeconds)];
    if (killStops.leftOut > 0) yield leftOutRow(name, killStops);
  }
}

function cells(stop: KillStop, startClockSeconds: number): CsvCell[] {
  const { fromSeconds, toSeconds, reasons } = stop;
  const [first, ...further] = reasons;
  return [
    ...clockCells(startClockSeconds + fromSeconds),
    thousandth(fromSeconds),
    thousandth(toSeconds - fromSeconds),
    first!.cause,
    first!.where,
    first!.what,
    further.map(({ cause, where, what }) => [cause, where, what].filter((word) => word !== "").join(": ")).join("; "),
    ...[stop.stunned, stop.stunnedMost, stop.bleeding, stop.bleedingMost, stop.caught],
    thousandth(stop.longestWaitSeconds),
    stop.neverStuck,
    stop.startedAgain ? "yes" : "no",
  ];
}

function thousandth(value: number): number {
  return Math.round(value * 1000) / 1000;
}

function leftOutRow(variant: string, { stops, leftOut, seconds }: KillStopsRecord): CsvCell[] {
  const listed = stops.reduce((sum, { fromSeconds, toSeconds }) => sum + toSeconds - fromSeconds, 0);
  const words = `${leftOut} more stops, not listed`;
  return [
    variant,
    null,
    null,
    null,
    null,
    thousandth(seconds - listed),
    words,
    ...new Array<CsvCell>(STOPS_COLUMNS.length - 7).fill(null),
  ];
}
