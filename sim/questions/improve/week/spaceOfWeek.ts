import {
  dayJson,
  type Fault,
  formatPath,
  isRecord,
  listWords,
  nearestWords,
  type Plan,
} from "../../../asked/plan/index.ts";
import { changedJson } from "../../../asked/study/index.ts";
import { countedDays } from "../../../day/observations/index.ts";
import { readClock, readQuantity, time, writeClock } from "../../../text/units/index.ts";
import type { ImproveFile } from "../schema/improveFile.ts";
import type { Counts, Element, Space } from "../space.ts";
import { countNow, crewFaults, positionFaults, settingsOfPeople } from "../spaceOfPeople.ts";
import {
  type HourAsked,
  hourElement,
  hourKey,
  hourSettings,
  readHour,
  twiceFaults,
  unknownFault,
} from "../spaceOfTimes.ts";

type Asked = NonNullable<ImproveFile["allocate"]["week"]>;
type Entry = Asked["among"][number];
type AskedDay = NonNullable<Entry["day"]>;
type AskedPeople = NonNullable<Entry["people"]>;
type At = readonly (string | number)[];
type Json = Record<string, unknown>;

const AT = ["allocate", "week", "among"];
/** Of the positions that go with people. */
const ALONE = { set: {}, insert: [], remove: [] };

/** The week as its file writes it. */
interface Written {
  plan: Plan;
  json: Json;
}

/** One thing of one day that can be otherwise. */
interface Movable {
  on: string;
  element: Element & { today: number };
  /** Paths that it sets in the plan of its day. */
  settings(count: number): Record<string, unknown>;
  /** Of lorries that come on another day: which, and when. */
  lorries?: { load: string; count: number; at: string | null; days: readonly string[] };
}

/** What of the days of a week may be moved; each is a step away from the week as it is, and any number of them go together. */
export function spaceOfWeek(
  { among, mostPeople }: Asked,
  plan: Plan,
  json: unknown,
): { space: Space; faults: Fault[] } {
  const written = { plan, json: json as Json };
  const read = among.map((entry, index) => readEntry(entry, [...AT, index], written));
  const movables = read.flatMap(({ found }) => (found === null ? [] : [found]));
  const space = spaceFrom(movables, written, mostPeople);
  const faults = [
    ...read.flatMap(({ faults: own }) => own),
    ...twiceFaults(among.map(entryKey), AT),
    ...mostFaults(space, mostPeople, movables.length === among.length),
  ];
  return { space, faults };
}

function spaceFrom(movables: readonly Movable[], written: Written, mostPeople: number | undefined): Space {
  const elements = movables.map(({ element }) => element);
  const people = elements.flatMap(({ time }, element) =>
    time?.what === "people" ? [{ element, fewest: Number(time.moments[0]) }] : [],
  );
  return {
    ...{ kind: "week", unit: "steps from today's week", elements, least: 0 },
    most: elements.reduce((sum, { to, today }) => sum + Math.max(today, to - today), 0),
    base: elements.map(({ today }) => today),
    ...{ apart: [], offerCosts: [] },
    ...(mostPeople === undefined ? {} : { people: { of: people, most: mostPeople } }),
    changeOf: (counts) => ({ ...ALONE, set: settingsOf(movables, counts, written) }),
    nameOf: (counts) => {
      const moved = elements.filter(({ today }, index) => counts[index] !== today);
      const words = moved.map(
        (element) => `${element.time!.label} ${element.time!.moments[counts[elements.indexOf(element)]!]}`,
      );
      return words.length === 0 ? "every day as it is" : words.join(", ");
    },
  };
}

/** What a study sets in each day that something is moved on, behind all else that is different on that day. */
function settingsOf(movables: readonly Movable[], counts: Counts, written: Written): Record<string, unknown> {
  const moved = movables.flatMap((movable, index) =>
    counts[index] === movable.element.today ? [] : [{ ...movable, count: counts[index]! }],
  );
  const ofDays = new Map<string, Record<string, unknown>>();
  for (const { on, settings, count } of moved) ofDays.set(on, { ...ofDays.get(on), ...settings(count) });
  for (const [day, loads] of movedLoads(moved, ofDays, written)) {
    ofDays.set(day, { ...ofDays.get(day), "supply.loads": loads });
  }
  return Object.fromEntries(
    [...ofDays].map(([day, set]) => {
      const before = writtenDay(written, day).set;
      return [formatPath(["week", "days", day, "set"]), { ...(isRecord(before) ? before : {}), ...set }];
    }),
  );
}

/** The lorries of the days between which some are moved, at the hours that these days' own settings give them. */
function movedLoads(
  moved: readonly (Movable & { count: number })[],
  ofDays: ReadonlyMap<string, Record<string, unknown>>,
  written: Written,
): Map<string, Json[]> {
  const loads = new Map<string, Json[]>();
  const loadsOf = (day: string) => {
    const set = ofDays.get(day) ?? {};
    const known = loads.get(day) ?? loadsIn(changedJson(planOfDay(written, day), { ...ALONE, set }).json);
    loads.set(day, known);
    return known;
  };
  for (const { lorries, on, count } of moved) {
    if (lorries === undefined) continue;
    const [from, to] = [loadsOf(on), loadsOf(lorries.days[count]!)];
    const load = from.find(({ name }) => name === lorries.load)!;
    const all = lorriesOf(load);
    const rest = all - lorries.count;
    const name = to.some((other) => other.name === load.name) ? `${load.name} from ${on}` : load.name;
    to.push({ ...withLorries(load, lorries.count), name, at: lorries.at ?? hourOfLorry(load, rest) });
    if (rest === 0) from.splice(from.indexOf(load), 1);
    else from[from.indexOf(load)] = withLorries(load, rest);
  }
  return loads;
}

function withLorries(load: Json, times: number): Json {
  const { repeat, ...one } = structuredClone(load);
  return times === 1 || !isRecord(repeat) ? one : { ...one, repeat: { ...repeat, times } };
}

function hourOfLorry({ at, repeat }: Json, lorry: number): string {
  const every = isRecord(repeat) ? (readQuantity(time, repeat.every).value ?? 0) : 0;
  return writeClock(readClock(at).value! + lorry * every);
}

function lorriesOf({ repeat }: Json): number {
  return isRecord(repeat) ? Number(repeat.times) : 1;
}

function loadsIn(json: unknown): Json[] {
  const supply = isRecord(json) && isRecord(json.supply) ? json.supply : {};
  return Array.isArray(supply.loads) ? supply.loads.filter(isRecord) : [];
}

function planOfDay(written: Written, day: string): Json {
  return dayJson(written.json, writtenDay(written, day)).json;
}

function writtenDay({ json }: Written, name: string): Json {
  return (json.week as { days: Json[] }).days.find((day) => day.name === name)!;
}

type Read = { found: Movable | null; faults: Fault[] };

function readEntry(entry: Entry, at: At, written: Written): Read {
  const [what, asked] = keyed(entry);
  const days = countedDays(written.plan).map(({ name }) => ({ name }));
  if (days.every(({ name }) => name !== asked.on)) {
    return none([unknownFault("working day that is counted", asked.on, [...at, what, "on"], days)]);
  }
  if (entry.day !== undefined) return readDay(entry.day, [...at, what], written);
  if (entry.people !== undefined) return readPeople(entry.people, [...at, what], written);
  return readMoved(hourOf(entry), asked.on, at, written);
}

function keyed(entry: Entry): [string, { on: string }] {
  const [found] = Object.entries(entry).filter(([, asked]) => asked !== undefined);
  return found as [string, { on: string }];
}

function entryKey(entry: Entry): string {
  const [, { on }] = keyed(entry);
  if (entry.day !== undefined) return `day of ${entry.day.lorries ?? "all"} lorries of ${entry.day.load} on ${on}`;
  if (entry.people !== undefined) return `people of ${entry.people.crew} on ${on}`;
  return `${hourKey(hourOf(entry))} on ${on}`;
}

function none(faults: Fault[]): Read {
  return { found: null, faults };
}

type HourEntry = Parameters<typeof hourKey>[0];

function hourOf({ load, gap, shift, break: pause }: Entry): HourEntry {
  return { load, gap, shift, break: pause };
}

function readMoved(asked: HourEntry, on: string, at: At, written: Written): Read {
  const json = planOfDay(written, on);
  const { found, faults } = readHour(asked, at, json, `on ${on}`);
  if (found === null) return none(faults);
  const hour = hourElement(found);
  const label = {
    ...{ load: `${found.name} on ${on}`, gap: `${found.name} on ${on}, every` },
    ...{ shift: `shift ${found.name} on ${on} from`, break: `${found.name} on ${on}` },
  }[found.what];
  const element = { ...hour, name: `${hour.name} on ${on}`, price: 1, time: { ...hour.time, label, on } };
  return {
    found: { on, element, settings: (count) => hourSettings([found satisfies HourAsked], [element], [count], json) },
    faults,
  };
}

/** Today's day is one of those that are tried, in the order of the calendar. */
function readDay(asked: AskedDay, at: At, written: Written): Read {
  const { load, on, days: others, at: hour } = asked;
  const loads = loadsIn(planOfDay(written, on));
  const known = loads.find(({ name }) => name === load);
  if (known === undefined) {
    const names = loads.map(({ name }) => ({ name: String(name) }));
    return none([unknownFault(`load on ${on}`, load, [...at, "load"], names)]);
  }
  const open = countedDays(written.plan).map(({ name }) => name);
  const all = lorriesOf(known);
  const count = asked.lorries ?? all;
  const faults = [...dayFaults(others, open, [...at, "days"]), ...lorryFaults(count, all, [...at, "lorries"])];
  if (faults.length > 0) return none(faults);
  const days = open.filter((day) => day === on || others.includes(day));
  const today = days.indexOf(on);
  if (days.length === 1) return none([nowhere([...at, "days"], on)]);
  const label = count === all ? `${load} of ${on} on` : `last ${count} of ${load} of ${on} on`;
  return {
    found: {
      on,
      settings: () => ({}),
      lorries: { load, count, days, at: hour === undefined ? null : writeClock(hour) },
      element: {
        ...{
          name: `${load}, day${count === all ? "" : ` of the last ${count}`}`,
          from: 0,
          to: days.length - 1,
          price: 1,
          today,
        },
        time: {
          what: "day",
          of: load,
          many: count > 1,
          label,
          moments: days,
          stepSeconds: 0,
          on,
          lorries: count === all ? 0 : count,
        },
      },
    },
    faults: [],
  };
}

function dayFaults(days: readonly string[], open: readonly string[], at: At): Fault[] {
  return days.flatMap((day, index): Fault[] => {
    if (open.includes(day)) return [];
    const found = `'${day}' is no working day that is counted`;
    return [
      {
        path: formatPath([...at, index]),
        found,
        allowed: listWords(open),
        remedy: nearestWords(day, open, "name one of these"),
      },
    ];
  });
}

function lorryFaults(count: number, all: number, at: At): Fault[] {
  if (count <= all) return [];
  return [{ path: formatPath(at), found: `${count} of ${all} lorries`, allowed: `${all} or fewer`, remedy: "" }];
}

function nowhere(at: At, on: string): Fault {
  return { path: formatPath(at), found: `no day but ${on} itself`, allowed: "another day", remedy: "name one" };
}

function readPeople({ crew, on, from, to, positions }: AskedPeople, at: At, written: Written): Read {
  const plan = countedDays(written.plan).find(({ name }) => name === on)!.plan;
  const json = planOfDay(written, on);
  const faults = [...crewFaults(crew, [...at, "crew"], plan), ...positionFaults(positions, [...at, "positions"], plan)];
  if (faults.length > 0) return none(faults);
  const now = countNow({ crew, positions: [] }, plan)!;
  const out = (key: string, allowed: string): Read =>
    none([
      {
        path: formatPath([...at, key]),
        found: `${{ from, to }[key]}, but it has ${now} on ${on}`,
        allowed,
        remedy: "",
      },
    ]);
  if (from > now) return out("from", `${now} or fewer`);
  if (to < now) return out("to", `${now} or more`);
  if (from === to) return none([nowhere([...at, "to"], `${now} people`)]);
  const moments = Array.from({ length: to - from + 1 }, (_, count) => String(from + count));
  return {
    found: {
      on,
      settings: (count) =>
        settingsOfPeople({ crew, positions, count: from + count, by: from + count - now }, plan, json),
      element: {
        ...{ name: `${crew} on ${on}`, from: 0, to: to - from, price: 1, today: now - from },
        time: { what: "people", of: crew, many: true, label: `${crew} on ${on}`, moments, stepSeconds: 0, on },
      },
    },
    faults: [],
  };
}

function mostFaults({ people, elements }: Space, most: number | undefined, whole: boolean): Fault[] {
  if (most === undefined || !whole) return [];
  const fewest = people!.of.reduce((sum, each) => sum + each.fewest, 0);
  const today = people!.of.reduce((sum, { element, fewest }) => sum + fewest + elements[element]!.today!, 0);
  const path = "allocate.week.mostPeople";
  if (people!.of.length === 0)
    return [
      { path, found: `${most}, but no people are to be moved`, allowed: "entries of people", remedy: "leave it out" },
    ];
  if (most >= fewest) return [];
  return [
    {
      path,
      found: `${most}, fewer than the entries have at least`,
      allowed: `${fewest} or more; today ${today}`,
      remedy: "",
    },
  ];
}
