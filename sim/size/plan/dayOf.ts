import { meanOf } from "../../random/index.ts";
import type { Demand, Step } from "../demand.ts";
import type { Parts } from "../parts.ts";
import { stepSeconds } from "../stepSeconds.ts";
import { firstLorryAt } from "./firstLorryAt.ts";

const KILL = "kill";
const FROM = "stunning";
const TO = "bleeding";

/**
 * Shifts and breaks as given. Crews behind the kill go to their breaks later, by the time in which the line runs empty up to
 * them, in whole minutes; the kill itself goes when nothing stunned is left unbled.
 */
export function dayOf(demand: Demand, { stations }: Parts): Record<string, unknown> {
  const { day, steps, written } = demand;
  const given = written.day as {
    shifts: unknown;
    breaks?: Record<string, unknown>[];
    preStart: unknown;
    cleaning: unknown;
  };
  const later = laterOf(steps);
  const crews = [...new Set(stations.flatMap(({ crew }) => (crew === null ? [] : [crew])))];
  const stretch = steps.some(({ name }) => name === FROM) && steps.some(({ name }) => name === TO);
  return {
    start: firstLorryAt(demand),
    shifts: given.shifts,
    breaks: (given.breaks ?? []).map((pause) => ({
      ...pause,
      crews,
      later: Object.fromEntries(crews.flatMap((crew) => (later.has(crew) ? [[crew, later.get(crew)]] : []))),
    })),
    preStart: given.preStart,
    ...(day.cleaning > 0 ? { cleaning: { length: given.cleaning, crews } } : {}),
    ...(stretch ? { safeStop: { from: FROM, to: TO } } : {}),
  };
}

/** By step: how long after the last head was stunned the line is empty before it. */
function laterOf(steps: readonly Step[]): Map<string, string> {
  const later = new Map<string, string>();
  let seconds = 0;
  let bled = false;
  for (const step of steps) {
    if (bled && step.section !== KILL) later.set(step.name, `${Math.ceil(seconds / 60)} min`);
    if (step.name === TO) bled = true;
    const { travel } = step.figures;
    if (!step.offLine && (bled || step.section === KILL))
      seconds += stepSeconds(step) + (travel == null ? 0 : meanOf(travel));
  }
  return later;
}
