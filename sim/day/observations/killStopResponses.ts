import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord, KillStopsRecord } from "../engine/index.ts";
import { killLineOf, stunToStickLimits } from "../line/index.ts";
import type { Response } from "./response.ts";

const FIRST = "killStops";

/** True for responses that only a day with its stops of the kill line has. */
export function needsKillStops(key: string): boolean {
  return key.startsWith(`${FIRST}.`);
}

/** What counts, in a sentence; the whole of it stands in sim/day/engine/README.md. */
export const KILL_STOP_MEANING =
  "A stop of the kill line: one of its steps, from stunning to the end of bleeding, stands still for 10 s or longer. Waiting for heads, or for room at the next of these steps, does not count.";

/** How often and how long the kill line stood, and how long heads that were stunned waited for sticking then. */
export function killStopResponses(plan: Plan): Response[] {
  if (killLineOf(plan) === null) return [];
  const duration = { unit: "s", format: "duration" } as const;
  const number = { format: "number" } as const;
  return [
    row("count", "Stops of the kill line", { ...number, unit: "stops" }, ({ count }) => count),
    row(
      "unplanned",
      "Stops of the kill line, without planned breaks",
      { ...number, unit: "stops" },
      ({ unplanned }) => unplanned.count,
    ),
    row("seconds", "Time that the kill line stood", duration, ({ seconds }) => seconds),
    row(
      "longest",
      "Longest stop of the kill line, without planned breaks",
      duration,
      ({ unplanned }) => unplanned.longestSeconds,
    ),
    row(
      "caught",
      "Stunned heads that a stop caught before sticking",
      { ...number, unit: "heads" },
      ({ caught }) => caught,
    ),
    row("worstWait", "Longest wait until such a head was stuck", duration, (stops) => stops.worstWaitSeconds),
  ];
}

/**
 * What a study keeps of each day to tell how stunned heads fared: those outside a limit from stunning to sticking. Stops of
 * the kill line are kept of the day that is shown, and of all days where a response asks for them: they cost a third of a day.
 */
export function killLineKeys(plan: Plan): string[] {
  const line = killLineOf(plan);
  if (line === null) return [];
  return stunToStickLimits(plan, line).flatMap(({ name }) => [`beyond.${name}`, `worst.${name}`]);
}

function row(
  key: string,
  label: string,
  rest: Pick<Response, "unit" | "format">,
  of: (stops: KillStopsRecord) => number,
): Response {
  const read = ({ killStops }: DayRecord) => (killStops === null ? null : of(killStops));
  return { key: `${FIRST}.${key}`, label, meaning: KILL_STOP_MEANING, ...rest, better: "less", of: read };
}
