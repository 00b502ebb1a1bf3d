import { workplace } from "../line/index.ts";
import { formatPath, type Plan } from "../plan/index.ts";
import { meanOf, timesAsLong } from "../random/index.ts";
import type { PlanChange } from "./change.ts";
import { pathOf, peopleOf, type WorkStep, withMorePeople, withWorkplace } from "./workplaces.ts";

/** How much shorter a cycle is tried: enough to be seen, little enough to be a slope. */
export const SHORTER = 0.05;

/** One person more, in every shift that the crew works. */
export function onePersonMore(plan: Plan, crew: string): PlanChange {
  const people = peopleOf(withMorePeople(plan, crew, 1), crew);
  return {
    kind: "person",
    of: crew,
    label: `one person more in ${crew}`,
    set: { [formatPath(["crews", crew, "people"])]: people },
    apply: (before) => withMorePeople(before, crew, 1),
  };
}

/** One place more before the station. */
export function onePlaceMore(step: Extract<WorkStep, { kind: "station" }>): PlanChange {
  const buffer = step.of.buffer + 1;
  return {
    kind: "place",
    of: step.name,
    label: `one place more before ${step.name}`,
    set: { [pathOf(step, "buffer")]: buffer },
    apply: (plan) => withWorkplace(plan, step.name, () => ({ buffer })),
  };
}

/** One position more, and the people it needs. */
export function onePositionMore(plan: Plan, step: WorkStep): PlanChange {
  const { positions, crews, peoplePerPosition } = workplace(step);
  const crew = crews[0];
  const changed = { positions: positions + 1 };
  const more = crew === undefined ? plan : withMorePeople(plan, crew, peoplePerPosition);
  const people = crew === undefined ? {} : { [formatPath(["crews", crew, "people"])]: peopleOf(more, crew) };
  const who = peoplePerPosition === 1 ? "its person" : "its people";
  return {
    kind: "position",
    of: step.name,
    label: `one position more at ${step.name}${crew === undefined ? "" : ` with ${who}`}`,
    set: { [pathOf(step, "positions")]: changed.positions, ...people },
    apply: (before) => {
      const staffed = crew === undefined ? before : withMorePeople(before, crew, peoplePerPosition);
      return withWorkplace(staffed, step.name, () => changed);
    },
  };
}

/** The cycle 5 % shorter, its spread with it. */
export function shorterCycle(step: WorkStep): PlanChange {
  const key = step.kind === "crates" ? "secondsPerCycle" : "cycleSeconds";
  const cycle = step.kind === "crates" ? step.of.secondsPerCycle : step.of.cycleSeconds;
  const shorter = timesAsLong(cycle, 1 - SHORTER);
  return {
    kind: "shorter cycle",
    of: step.name,
    label: `work at ${step.name} ${SHORTER * 100} % quicker`,
    set: { [pathOf(step, step.kind === "crates" ? "perCrate" : "cycle")]: `mean ${meanOf(shorter).toPrecision(4)} s` },
    apply: (plan) => withWorkplace(plan, step.name, () => ({ [key]: shorter })),
  };
}

/** The station as if it never broke. */
export function noBreakdowns(step: WorkStep): PlanChange {
  return {
    kind: "no breakdowns",
    of: step.name,
    label: `no breakdowns at ${step.name}`,
    set: { [pathOf(step, "breakdowns")]: [] },
    apply: (plan) => withWorkplace(plan, step.name, () => ({ breakdowns: [] })),
  };
}
