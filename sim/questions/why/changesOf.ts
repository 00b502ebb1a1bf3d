import { type Breakdown, type Dwell, formatPath, type Plan, type SharedBreakdown } from "../../asked/plan/index.ts";
import { workplace } from "../../day/line/index.ts";
import { meanOf, timesAsLong } from "../../maths/random/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { PlanChange } from "./change.ts";
import {
  hasPeopleForMore,
  pathOf,
  peopleOf,
  type WorkStep,
  withDwell,
  withMorePeople,
  withWorkplace,
  workStep,
} from "./workplaces.ts";

/** How much shorter a machine's cycle is tried. */
const SHORTER = 0.05;

/** One person more, in every shift that the crew works. */
export function onePersonMore(crew: string): PlanChange {
  return {
    ...{ kind: "person", of: crew, plural: false },
    label: `one more person in ${crew}`,
    phrase: "one more person in the crew",
    on: (before) => {
      const plan = withMorePeople(before, crew, 1);
      return { plan, set: peopleSet(plan, crew) };
    },
  };
}

/** One position more, and the people it needs where the crew has none to spare. */
export function onePositionMore(plan: Plan, step: WorkStep): PlanChange {
  const { positions, crews, peoplePerPosition } = workplace(step);
  const crew = crews[0];
  const come = crew === undefined || hasPeopleForMore(plan, crew, peoplePerPosition) ? 0 : peoplePerPosition;
  const who = come === 0 ? "" : come === 1 ? " with its person" : ` with its ${come} people`;
  const what = crew !== undefined ? "one more position" : positions === 1 ? "a second machine" : "one more machine";
  return {
    ...{ kind: "position", of: step.name, plural: false },
    label: `${what} at ${step.name}${who}`,
    phrase: `${what}${who}`,
    on: (before) => {
      const staffed = crew === undefined || come === 0 ? before : withMorePeople(before, crew, come);
      const now = workplace(workStep(staffed, step.name)!).positions + 1;
      const changed = withWorkplace(staffed, step.name, () => ({ positions: now }));
      const people = crew === undefined || come === 0 ? {} : peopleSet(changed, crew);
      return { plan: changed, set: { [pathOf(step, "positions")]: now, ...people } };
    },
  };
}

function peopleSet(plan: Plan, crew: string): Record<string, unknown> {
  return { [formatPath(["crews", crew, "people"])]: peopleOf(plan, crew) };
}

/** A machine's cycle 5 % shorter, its spread with it. */
export function quickerMachine(step: WorkStep): PlanChange {
  const isCrates = does(step, "handle crates");
  const key = isCrates ? "secondsPerCycle" : "cycleSeconds";
  const cycle = isCrates ? step.of.secondsPerCycle : step.of.cycleSeconds;
  const shorter = timesAsLong(cycle, 1 - SHORTER);
  const mean = `mean ${meanOf(shorter).toPrecision(4)} s`;
  return {
    ...{ kind: "quicker machine", of: step.name, plural: false },
    label: `a ${SHORTER * 100} % quicker machine at ${step.name}`,
    phrase: `a ${SHORTER * 100} % quicker machine`,
    on: (before) => ({
      plan: withWorkplace(before, step.name, () => ({ [key]: shorter })),
      set: { [pathOf(step, isCrates ? "perCrate" : "cycle")]: mean },
    }),
  };
}

/** What can be done about a station's breakdowns, the most first. */
export function breakdownChanges(step: WorkStep): PlanChange[] {
  const { name } = step;
  const each = (change: (found: Breakdown) => Breakdown) => (plan: Plan) =>
    withWorkplace(plan, name, ({ breakdowns }) => ({ breakdowns: breakdowns.map(change) }));
  const rarer = each((found) => ({ ...found, uptimeSeconds: timesAsLong(found.uptimeSeconds, 2) }));
  const quicker = each((found) => ({ ...found, repairSeconds: timesAsLong(found.repairSeconds, 0.5) }));
  const set = (text: unknown) => ({ [pathOf(step, "breakdowns")]: text });
  return [
    {
      ...{ kind: "no breakdowns", of: name, plural: true },
      label: `no breakdowns at ${name}`,
      phrase: "no breakdowns at all",
      on: (plan) => ({ plan: withWorkplace(plan, name, () => ({ breakdowns: [] })), set: set([]) }),
    },
    {
      ...{ kind: "rarer breakdowns", of: name, plural: true },
      label: `breakdowns half as often at ${name}`,
      phrase: "breakdowns half as often",
      on: (plan) => ({ plan: rarer(plan), set: set("uptimes twice as long") }),
    },
    {
      ...{ kind: "quicker repairs", of: name, plural: true },
      label: `repairs twice as fast at ${name}`,
      phrase: "repairs twice as fast",
      on: (plan) => ({ plan: quicker(plan), set: set("repairs half as long") }),
    },
  ];
}

/** What can be done about a breakdown that stops several stages, the most first. */
export function sharedBreakdownChanges(name: string): PlanChange[] {
  const each = (change: (found: SharedBreakdown) => SharedBreakdown[]) => (plan: Plan) => ({
    ...plan,
    sharedBreakdowns: plan.sharedBreakdowns.flatMap((found) => (found.name === name ? change(found) : [found])),
  });
  const none = each(() => []);
  const rarer = each((found) => [{ ...found, uptimeSeconds: timesAsLong(found.uptimeSeconds, 2) }]);
  const quicker = each((found) => [{ ...found, repairSeconds: timesAsLong(found.repairSeconds, 0.5) }]);
  const path = formatPath(["sharedBreakdowns", name]);
  const change = (kind: PlanChange["kind"], words: string, of: typeof none, text: unknown): PlanChange => ({
    ...{ kind, of: name, plural: true },
    label: `${words} (${name})`,
    phrase: words,
    on: (plan) => ({ plan: of(plan), set: { [path]: text } }),
  });
  return [
    change("no breakdowns", "no stops at all", none, null),
    change("rarer breakdowns", "stops half as often", rarer, "uptime twice as long"),
    change("quicker repairs", "repairs twice as fast", quicker, "repair half as long"),
  ];
}

/** Twice the places before a station and half of them, one more and one fewer at least. */
export function placeChanges(step: Extract<WorkStep, { kind: "station" }>): PlanChange[] {
  const { buffer } = step.of;
  const to = (places: number): PlanChange => ({
    ...{ kind: places > buffer ? "more places" : "fewer places", of: step.name, plural: true },
    label: `${places} instead of ${buffer} places before ${step.name}`,
    phrase: `${places} instead of ${buffer} places before it`,
    on: (plan) => ({
      plan: withWorkplace(plan, step.name, () => ({ buffer: places })),
      set: { [pathOf(step, "buffer")]: places },
    }),
  });
  return [to(Math.max(1, buffer * 2)), ...(buffer === 0 ? [] : [to(Math.floor(buffer / 2))])];
}

/** Half as many places again in a dwell stage, twice as many (a longer trough), and a quarter fewer. The time in it stays. */
export function dwellChanges(dwell: Dwell): PlanChange[] {
  const { name, places, headsPerHook } = dwell;
  const hooks = places / headsPerHook;
  const wanted = [Math.ceil(hooks * 1.5), hooks * 2, Math.floor(hooks * 0.75)].map((count) => count * headsPerHook);
  return [...new Set(wanted)]
    .filter((count) => count > 0 && count !== places)
    .map((count) => ({
      ...{ kind: count > places ? ("more places" as const) : ("fewer places" as const), of: name, plural: true },
      label: `${count} instead of ${places} places in ${name}`,
      phrase: `${count} instead of ${places} places`,
      on: (plan) => ({
        plan: withDwell(plan, name, count),
        set: { [formatPath(["line", name, "places"])]: count },
      }),
    }));
}
