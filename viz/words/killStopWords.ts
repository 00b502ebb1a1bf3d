import { formatDecimals, formatDuration } from "../../sim/text/units/index.ts";
import type { DayRecord, KillStop, KillStopReason } from "../contract.ts";
import { isolated } from "../frame/index.ts";

/** What a cause is called where it stands by itself, as the label of a bar. */
export const STOP_CAUSES: Record<KillStopReason["cause"], string> = {
  breakdown: "breakdown",
  "chain stands": "chain stands",
  "planned break": "planned break",
  "nobody there": "nobody there",
  "full behind": "no room further on",
  "full vessel": "full vessel",
};

/** "breakdown at sticking (jam)", "no room further on: skinning (nobody there)". */
export function stopReasonWords({ cause, where, what }: KillStopReason): string {
  const more = what === "" ? "" : ` (${isolated(what)})`;
  const joined = cause === "full behind" ? `${STOP_CAUSES[cause]}:` : `${STOP_CAUSES[cause]} at`;
  return `${joined} ${isolated(where)}${more}`;
}

/**
 * What became of the heads that it caught, as far as the plan says. One place for all that may be done about them: what the
 * plan's rules do is told here as soon as a day counts it.
 */
export function stopEndWords(stop: KillStop): string {
  const unstuck =
    stop.neverStuck === 0
      ? ""
      : ` ${headsWords(stop.neverStuck)} ${stop.neverStuck === 1 ? "was" : "were"} never stuck.`;
  return `${beforeWords(stop)}${stop.startedAgain ? "The line was started again." : "Not started again: nothing more came, or the day ended."}${unstuck}`;
}

/** A planned stop that began with an empty line was one that hanging had ended for. */
function beforeWords({ reasons, stunned, bleeding }: KillStop): string {
  const isPlanned = reasons[0]!.cause === "planned break";
  return isPlanned && stunned + bleeding === 0 ? "No head was stunned or bleeding then. " : "";
}

/** How long a stunned head waited: to a tenth of a second below 10 s, to whole seconds above. */
export function waitWords(seconds: number): string {
  if (seconds > 0 && seconds < 0.05) return "under 0.1 s";
  return formatDuration(seconds < 10 ? Math.round(seconds * 10) / 10 : Math.round(seconds));
}

export function headsWords(heads: number): string {
  return heads === 1 ? "1 head" : `${formatDecimals(heads, 0)} heads`;
}

/** What counts as a stop, for those who read the record and nothing else. */
export function stopDefinition({ steps, leastSeconds }: NonNullable<DayRecord["killStops"]>): string {
  const [first = ""] = steps;
  const last = steps.at(-1) ?? first;
  const where = first === last ? isolated(first) : `one of the steps from ${isolated(first)} to ${isolated(last)}`;
  return `A stop counts when ${where} stands still for ${formatDecimals(leastSeconds, 0)} s or longer: it is broken, its people are on a break or not there, its chain stands, its vessel is full, or nothing after the kill line takes a head. Waiting for heads, or for room at the next of these steps, does not count. Stops are recorded from the first head at the kill line to the last that leaves it.`;
}
