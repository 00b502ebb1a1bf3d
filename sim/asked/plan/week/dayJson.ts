import { readClock } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { formatPath } from "../formatPath.ts";
import { isRecord } from "../isRecord.ts";
import { listWords } from "../listWords.ts";
import { nearestWords } from "../nearestName.ts";
import { setPathInPlace } from "../setPath.ts";

type Json = Record<string, unknown>;

/** The day's own keys that take the place of the same key of the plan's "day". */
const DAY_KEYS = ["start", "shifts", "breaks", "closing"] as const;

export interface DayJson {
  json: Json;
  /** Paths as from the day. */
  faults: Fault[];
}

/**
 * The plan of one day of a week, as a file would say it: the plan's own day but for what the week says of this one.
 * `plan`: the sound plan's JSON; `day`: one of its week's days, of sound shape. Neither is changed.
 */
export function dayJson(plan: Json, day: Json): DayJson {
  // Paths of uncertain figures may lead into the week, and they are the whole plan's.
  const { week: _, uncertain: __, ...usual } = plan;
  const json = structuredClone(usual) as Json;
  const calendar = json.day as Json;
  for (const key of DAY_KEYS) if (day[key] !== undefined) calendar[key] = structuredClone(day[key]);
  if (day.loads !== undefined) json.supply = { loads: structuredClone(day.loads) };
  const faults = [
    ...entriesOf(day.people).flatMap(([crew, people]) => givePeople(json, crew, people)),
    ...entriesOf(day.ill).flatMap(([crew, people]) => takePeople(json, crew, people as number)),
  ];
  calendar.breaks = [...((calendar.breaks as unknown[]) ?? []), ...downs(day)];
  for (const [path, value] of entriesOf(day.set)) {
    const fault = setPathInPlace(json, path, value);
    if (fault !== null) faults.push({ ...fault, path: formatPath(["set", path]) });
  }
  return { json, faults };
}

function entriesOf(written: unknown): [string, unknown][] {
  return isRecord(written) ? Object.entries(written) : [];
}

function givePeople(json: Json, name: string, people: unknown): Fault[] {
  const crew = crewOf(json, name, "people");
  if ("fault" in crew) return [crew.fault];
  crew.value.people = structuredClone(people);
  return [];
}

/** So many fewer in every shift. */
function takePeople(json: Json, name: string, ill: number): Fault[] {
  const crew = crewOf(json, name, "ill");
  if ("fault" in crew) return [crew.fault];
  const { people } = crew.value;
  const most = isRecord(people) ? Math.max(...Object.values(people).map(Number)) : Number(people);
  if (ill > most) {
    const found = `${ill} ill of ${most} people`;
    return [
      { path: formatPath(["ill", name]), found, allowed: `at most ${most}`, remedy: "write how many are missing" },
    ];
  }
  if (Array.isArray(crew.value.cover) && crew.value.cover.length > 0) {
    // Whoever steps in has to know how many are there by plan.
    crew.value.ill = Number(crew.value.ill ?? 0) + ill;
    return [];
  }
  const fewer = (there: unknown) => Math.max(0, Number(there) - ill);
  crew.value.people = isRecord(people)
    ? Object.fromEntries(Object.entries(people).map(([shift, there]) => [shift, fewer(there)]))
    : fewer(people);
  return [];
}

function crewOf(json: Json, name: string, key: string): { value: Json } | { fault: Fault } {
  const crews = Array.isArray(json.crews) ? json.crews.filter(isRecord) : [];
  const value = crews.find((crew) => crew.name === name);
  if (value !== undefined) return { value };
  const names = crews.map((crew) => String(crew.name));
  const allowed = listWords(names);
  const remedy = nearestWords(name, names, "check the name");
  return { fault: { path: formatPath([key, name]), found: `'${name}' is no crew`, allowed, remedy } };
}

/** What stands still as planned is a break of that stage alone, which ends at its time. */
function downs({ down }: Json): Json[] {
  if (!Array.isArray(down)) return [];
  return down.filter(isRecord).map(({ stage, from, to }, index) => ({
    ...{ name: `${stage} down ${index + 1}`, at: from, ends: "at its time", crews: [], stages: [stage] },
    length: `${(readClock(to).value! - readClock(from).value!) / 60} min`,
  }));
}
