import { formatClock, formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { KillStopColumns, KillStopRow } from "../charts/index.ts";
import type { DayRecord, KillStop, StudyResults, VariantResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { headsWords, STOP_CAUSES, stopEndWords, stopReasonWords, waitWords } from "../words/index.ts";
import { dayScene, dayWords } from "./dayScene.ts";

/** Rows that are drawn: the longest stops, in the order of the day. */
const MOST_DRAWN = 24;

/** The stops of the kill line on a variant's first day; null where none were recorded. */
export function killStopView(results: StudyResults, variant: VariantResults): KillStopColumns | null {
  const { killStops, startClockSeconds } = variant.day;
  if (killStops === null) return null;
  const rows = killStops.stops.map((stop) => rowOf(stop, startClockSeconds));
  const least = [...rows].map(({ from, to }) => to - from).sort((a, b) => b - a)[MOST_DRAWN - 1] ?? 0;
  const drawn = rows.filter(({ from, to }) => to - from >= least).slice(0, MOST_DRAWN);
  return {
    ...dayScene(results, variant),
    title: "Stops of the kill line",
    caption: "Each bar is a stop; beside it the heads that it caught on the way from stunning to the end of bleeding",
    subtitle: `Heads when it began; at most during it. Longest wait of a stunned head until it was stuck; ${dayWords(results, variant)}`,
    description: describe(killStops),
    causes: Object.values(STOP_CAUSES),
    rows: drawn,
    footnote: footnoteOf(killStops, drawn.length),
  };
}

function rowOf(stop: KillStop, startClockSeconds: number): KillStopRow {
  const { fromSeconds, toSeconds, reasons, caught, longestWaitSeconds } = stop;
  const clock = formatClock(startClockSeconds + fromSeconds, true);
  return {
    cause: STOP_CAUSES[reasons[0]!.cause],
    where: isolated(reasons[0]!.where),
    what: reasons[0]!.what === "" ? "" : isolated(reasons[0]!.what),
    from: fromSeconds,
    to: toSeconds,
    time: `${clock}, ${formatDuration(Math.round(toSeconds - fromSeconds))}`,
    stunned: stop.stunned,
    stunnedMost: stop.stunnedMost,
    bleeding: stop.bleeding,
    bleedingMost: stop.bleedingMost,
    caught,
    longestWait: caught === 0 ? null : longestWaitSeconds,
    longestWaitWords: caught === 0 ? "" : waitWords(longestWaitSeconds),
    ended: [...reasons.slice(1).map((reason) => `Then also ${stopReasonWords(reason)}.`), stopEndWords(stop)].join(" "),
  };
}

function describe(stops: NonNullable<DayRecord["killStops"]>): string {
  const { count, seconds, unplanned, caught, worstWaitSeconds, shorter } = stops;
  const short =
    shorter.count === 0
      ? ""
      : ` Stands too short to count as stops: ${formatDecimals(shorter.count, 0)}, ${formatDuration(shorter.seconds)} in all.`;
  if (count === 0) return `The kill line did not stop on this day.${short}`;
  const heads =
    caught === 0
      ? "No stunned head was caught before sticking."
      : `${headsWords(caught)} ${caught === 1 ? "was" : "were"} caught between stunning and sticking; the longest wait of one was ${waitWords(worstWaitSeconds)}.`;
  const times = count === 1 ? "once" : `${formatDecimals(count, 0)} times`;
  const planned = count - unplanned.count;
  const byPlan = planned === 0 ? "" : `, ${formatDecimals(planned, 0)} of them by plan`;
  const longest =
    unplanned.count === 0
      ? ""
      : `; the longest that was not planned lasted ${formatDuration(unplanned.longestSeconds)}`;
  return `The kill line stopped ${times}${byPlan}, for ${formatDuration(seconds)} in all${longest}. ${heads}${short}`;
}

function footnoteOf({ count }: NonNullable<DayRecord["killStops"]>, drawn: number): string {
  return drawn === count
    ? ""
    : `Drawn are the ${drawn} longest of ${formatDecimals(count, 0)} stops; stops.csv lists more.`;
}
