import type { Demand, HandlingStep } from "../demand.ts";
import type { Parts } from "../parts.ts";
import { MAINTENANCE } from "../repairs.ts";

/** Crates that stand at the hanging point where one at a time is fed. */
const AT_HANGING = 2;

/** Crates from the lorry to the hanging point and back. */
export function liveHandlingOf(demand: Demand, parts: Parts): Record<string, unknown> {
  const handling = demand.handling[parts.choice.way];
  const steps = Object.fromEntries(handling.map((step) => [step.name, stepOf(step, parts)]));
  const { unloading, ...further } = steps;
  const atOnce = handling.find(({ name }) => name === "feeding")?.figures.cratesAtOnce ?? 1;
  return {
    way: parts.choice.way,
    unloading,
    lairageCrates: parts.crates.lairageCrates,
    ...further,
    cratesAtHanging: Math.max(AT_HANGING, atOnce),
    fleet: { crates: parts.crates.fleet, away: (demand.written.crates as Record<string, unknown>).away },
  };
}

function stepOf({ name, figures, written }: HandlingStep, { crateSteps }: Parts): Record<string, unknown> {
  const { positions, crew, peoplePerPosition } = crateSteps.find((each) => each.name === name)!;
  const { time, breakdowns } = written;
  const { cratesAtOnce } = figures;
  const stops = Array.isArray(breakdowns) ? breakdowns.map((each) => ({ crew: MAINTENANCE, ...each })) : [];
  return {
    positions,
    ...(cratesAtOnce === 1 ? { perCrate: time } : { perCycle: time, cratesPerCycle: cratesAtOnce }),
    ...(crew === null ? {} : { crew, peoplePerPosition }),
    ...(stops.length === 0 ? {} : { breakdowns: stops }),
    ...Object.fromEntries(
      ["waterPerCrate", "waterReused", "power"].flatMap((key) =>
        written[key] === undefined ? [] : [[key, written[key]]],
      ),
    ),
  };
}
