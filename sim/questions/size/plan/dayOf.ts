import { meanOf } from "../../../maths/random/index.ts";
import type { Demand, DemandStep } from "../demand.ts";
import type { SizedCrew } from "../design.ts";
import type { Parts } from "../parts.ts";
import { MAINTENANCE } from "../repairs.ts";
import { stepSeconds } from "../stepSeconds.ts";
import { firstLorryAt } from "./firstLorryAt.ts";

const KILL = "kill";
const FROM = "stunning";
const TO = "bleeding";

/**
 * Shifts and breaks as given, for everybody. Crews behind the kill go to their breaks later, by the time in which the line runs empty up to
 * the last of their steps, in whole minutes; those who repair go last; the kill itself goes when nothing stunned is left unbled.
 */
export function dayOf(demand: Demand, { stations, crews: all }: Parts): Record<string, unknown> {
  const { day, steps, written } = demand;
  const given = written.day as {
    shifts: unknown;
    breaks?: Record<string, unknown>[];
    preStart: unknown;
    cleaning: unknown;
  };
  const later = laterOf(steps, all);
  const crews = all.map(({ name }) => name);
  const cleaners = [...new Set(stations.flatMap(({ crew }) => (crew === null ? [] : [crew])))];
  const stretch = steps.some(({ name }) => name === FROM) && steps.some(({ name }) => name === TO);
  return {
    start: firstLorryAt(demand),
    shifts: given.shifts,
    breaks: (given.breaks ?? []).map((pause) => ({
      ...pause,
      crews,
      later: later,
    })),
    preStart: given.preStart,
    ...(day.cleaning > 0 ? { cleaning: { length: given.cleaning, crews: cleaners } } : {}),
    ...(stretch ? { safeStop: { from: FROM, to: TO } } : {}),
  };
}

/** By crew: how long after the last head was stunned the line is empty before the last of its steps. */
function laterOf(steps: readonly DemandStep[], crews: readonly SizedCrew[]): Record<string, string> {
  const emptyAfter = emptyAfterOf(steps);
  const last = Math.max(0, ...emptyAfter.values());
  return Object.fromEntries(
    crews.flatMap(({ name, steps: own }) => {
      const seconds = name === MAINTENANCE ? last : Math.max(0, ...own.map((step) => emptyAfter.get(step) ?? 0));
      return seconds === 0 ? [] : [[name, `${Math.ceil(seconds / 60)} min`]];
    }),
  );
}

/** By step, in seconds, of those behind the kill. */
function emptyAfterOf(steps: readonly DemandStep[]): Map<string, number> {
  const found = new Map<string, number>();
  let seconds = 0;
  let bled = false;
  for (const step of steps) {
    if (bled && step.section !== KILL) found.set(step.name, seconds);
    if (step.name === TO) bled = true;
    const { travel } = step.figures;
    if (!step.offLine && (bled || step.section === KILL))
      seconds += stepSeconds(step) + (travel == null ? 0 : meanOf(travel));
  }
  return found;
}
