import { formatClock } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import type { Plan } from "../plan.ts";
import { faultAt, locatedList } from "../rules/located.ts";
import { reachedFrom, wayGraph } from "../rules/wayGraph.ts";
import { lastBegins, meanDayEnd } from "../stops/meanDay.ts";
import { workPlaces } from "./mannedPlaces.ts";

/** Times vary, so the last head may come by so much of the day later than by mean times. */
const LATER = 0.05;

interface Need {
  crews: string[];
  people: number;
  /** What stays undone, in words. */
  what: string;
  stays: string;
  /** Where it is to be done; null for what stops several. */
  place: string | null;
  lastAt: string | null;
}

/**
 * Work whose crews have too few people in the last shift and after it, while heads may still come there: after its last
 * shift a crew does not come back, and the day does not end. By mean times, so only where the plan shows it.
 */
export function lastShift(plan: Plan, json: unknown): Fault[] {
  const needs = needsOf(plan).flatMap((need) => {
    const last = lastManned(plan, need);
    return last === null ? [] : [{ need, last }];
  });
  if (needs.length === 0) return [];
  const begins = lastBegins(plan);
  const end = meanDayEnd(plan);
  const outBy = leavesBy(plan, json);
  return needs.flatMap(({ need, last }) => {
    const latest = need.lastAt === null ? end : (begins.get(need.lastAt) ?? end);
    const comes = Math.min(latest, outBy.get(need.place ?? "") ?? Infinity);
    const first = plan.day.shifts[0]!.fromSeconds;
    if (comes + LATER * Math.max(0, comes - first) <= plan.day.shifts[last]!.toSeconds) return [];
    return [warning(plan, json, need, last, comes)];
  });
}

/** In a week: the places behind a stage that heads stay in overnight, and the hour until which they leave it on any day. */
function leavesBy({ week }: Plan, json: unknown): Map<string, number> {
  const days = (week?.days ?? []).flatMap(({ plan }) => (plan === null ? [] : [plan.day.overnight ?? []]));
  const graph = wayGraph(json);
  const until = (days[0] ?? []).map(({ stage }) => {
    const hours = days.map((all) => all.find((each) => each.stage === stage)?.untilSeconds ?? Infinity);
    return [stage, Math.max(...hours)] as const;
  });
  return new Map(
    until.flatMap(([stage, seconds]) =>
      [...reachedFrom(graph, `in ${stage}`)].flatMap((node) =>
        node.startsWith("in ") ? [[node.slice("in ".length), seconds] as const] : [],
      ),
    ),
  );
}

/** The last shift in which one of the crews has the people for it; null when that is the day's last one, or none. */
function lastManned({ day, crews }: Plan, { crews: names, people }: Need): number | null {
  const able = day.shifts.map((_, shift) => {
    return names.some(
      (name) =>
        peopleIn(
          crews.find((crew) => crew.name === name),
          shift,
        ) >= people,
    );
  });
  const last = able.lastIndexOf(true);
  return last < 0 || last === able.length - 1 ? null : last;
}

/** Who leaves when their own work is done is there beyond their last shift. */
function peopleIn(crew: Plan["crews"][number] | undefined, shift: number): number {
  if (crew === undefined) return 0;
  const last = crew.people.findLastIndex((there) => there > 0);
  return crew.people[crew.leavesOnItsOwn ? Math.min(shift, Math.max(0, last)) : shift] ?? 0;
}

function needsOf(plan: Plan): Need[] {
  const shared = plan.sharedBreakdowns.flatMap(({ name, crew }) =>
    crew === null ? [] : [repairNeed(`'${name}'`, crew, null, null)],
  );
  const ofPlaces = workPlaces(plan).flatMap((place) => {
    const { name, crews, peoplePerPosition, breakdowns, lastAt } = place;
    const own: Need[] =
      crews.length === 0
        ? []
        : [
            {
              crews,
              people: peoplePerPosition,
              what: `'${name}'`,
              stays: "what comes there later stays unworked",
              place: name,
              lastAt,
            },
          ];
    const repairs = breakdowns.flatMap(({ name: breakdown, crew }): Need[] =>
      crew === null ? [] : [repairNeed(`'${breakdown}' at '${name}'`, crew, name, lastAt)],
    );
    return [...own, ...repairs];
  });
  return [...ofPlaces, ...shared];
}

function repairNeed(what: string, crew: string, place: string | null, lastAt: string | null): Need {
  return { crews: [crew], people: 1, what, stays: "what breaks later is not repaired", place, lastAt };
}

function warning({ day }: Plan, json: unknown, need: Need, last: number, comes: number): Fault {
  const { crews, people, what, stays } = need;
  const shift = day.shifts[last]!;
  const clock = (seconds: number) => formatClock(day.startClockSeconds + seconds);
  const who = crews.length === 1 ? `'${crews[0]}'` : `none of ${listWords(crews)}`;
  const has =
    crews.length === 1
      ? `has ${people === 1 ? "nobody" : `fewer than the ${people} people`}`
      : `has the ${people} people`;
  const found = `${who} ${has} for ${what} after ${clock(shift.toSeconds)}, the end of '${shift.name}', and at mean times the last head gets there at ${clock(comes)}: ${stays}, and the day does not end`;
  const at = locatedList(json, "crews").find(({ value }) => value.name === crews[0])?.at ?? ["crews"];
  return faultAt(
    [...at, "people"],
    found,
    "",
    `give the crew ${people === 1 ? "somebody" : `${people} people`} in '${day.shifts.at(-1)!.name}', or end hanging earlier`,
  );
}
