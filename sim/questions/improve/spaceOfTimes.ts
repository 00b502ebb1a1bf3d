import { type Fault, formatPath, isRecord, listWords, nearestWords } from "../../asked/plan/index.ts";
import { readClock, readQuantity, time, writeClock } from "../../text/units/index.ts";
import type { ImproveFile } from "./schema/improveFile.ts";
import type { Counts, Element, Space, TimeElement } from "./space.ts";

type Asked = NonNullable<ImproveFile["allocate"]["times"]>;

/** What has an hour, or a gap between hours. */
export type Hour = "load" | "gap" | "shift" | "break";

type At = readonly (string | number)[];

/** More moments of one thing than this tell nothing that a longer step does not. */
const MAX_MOMENTS = 200;

/** Something with an hour, or a gap between hours, that the plan has. */
interface Movable {
  name: string;
  /** Where the plan's file has it. */
  at: At;
  /** Seconds after midnight, or of a gap. */
  today: number;
  /** Of a shift: its end, which moves with it. */
  ends: number | null;
  /** A load that repeats. */
  many: boolean;
}

/** Something that may be moved, with what the plan says of it. */
export interface HourAsked extends Movable {
  what: Hour;
  from: number;
  to: number;
  step: number;
}

/** Lorry times, shift starts and breaks to move; `json` is the plan as its file writes it. */
export function spaceOfTimes({ among }: Asked, json: unknown): { space: Space; faults: Fault[] } {
  const at = ["allocate", "times", "among"];
  const read = among.map((asked, index) => readHour(asked, [...at, index], json, "of the plan"));
  const keys = among.map(hourKey);
  const faults = [...read.flatMap(({ faults: own }) => own), ...twiceFaults(keys, at)];
  const asking = read.flatMap(({ found }) => (found === null ? [] : [found]));
  const elements = asking.map(hourElement);
  const space: Space = {
    kind: "times",
    unit: "min moved",
    elements,
    least: 0,
    most: elements.reduce((sum, { to, price, today = 0 }) => sum + price * Math.max(today, to - today), 0),
    base: elements.map(({ today = 0 }) => today),
    apart: [],
    offerCosts: [],
    changeOf: (counts) => ({ set: hourSettings(asking, elements, counts, json), insert: [], remove: [] }),
    nameOf: (counts) =>
      elements.map(({ time: moved }, index) => `${moved!.label} ${moved!.moments[counts[index]!]}`).join(", "),
  };
  return { space, faults };
}

/** A moment for each step from today's on, both ways. */
export function hourElement({
  what,
  name,
  many,
  today,
  from,
  to,
  step,
}: HourAsked): Element & { today: number; time: TimeElement } {
  const earlier = Math.floor((today - from) / step);
  const later = Math.floor((to - today) / step);
  const moments = Array.from({ length: earlier + later + 1 }, (_, count) =>
    momentWords(what, today + (count - earlier) * step),
  );
  const label = { load: name, gap: `${name}, every`, shift: `shift ${name} from`, break: name }[what];
  return {
    ...{
      name: { load: name, gap: `${name}, gap`, shift: `shift ${name}`, break: name }[what],
      from: 0,
      to: earlier + later,
      price: step / 60,
      today: earlier,
    },
    time: { what, of: name, many, label, moments, stepSeconds: step },
  };
}

function momentWords(what: Hour, seconds: number): string {
  return what === "gap" ? `${minutes(seconds)} min` : writeClock(seconds);
}

function minutes(seconds: number): number {
  return Math.round((seconds / 60) * 1000) / 1000;
}

/** The plan's own hours are not set, so that what is not moved stays as its file writes it. */
export function hourSettings(
  asking: readonly HourAsked[],
  elements: readonly Element[],
  counts: Counts,
  json: unknown,
): Record<string, unknown> {
  const start = startOf(json);
  const moved = asking.flatMap((each, index) => {
    const by = (counts[index]! - elements[index]!.today!) * each.step;
    return by === 0 ? [] : [{ ...each, by }];
  });
  const shifts = moved.some(({ what }) => what === "shift");
  return {
    // The clock of the day stays, or an end of work would be counted from another hour.
    ...(shifts && start !== null ? { "day.start": start } : {}),
    ...Object.fromEntries(
      moved.flatMap(({ what, at, today, ends, by }): [string, string][] => {
        if (what === "gap") return [[formatPath([...at, "repeat", "every"]), `${today + by} s`]];
        const begins = writeClock(today + by);
        if (what !== "shift") return [[formatPath([...at, "at"]), begins]];
        return [
          [formatPath([...at, "from"]), begins],
          [formatPath([...at, "to"]), writeClock(ends! + by)],
        ];
      }),
    ),
  };
}

/** What a plan without a start of its own day begins with; null where it says it. */
function startOf(json: unknown): string | null {
  const day = isRecord(json) && isRecord(json.day) ? json.day : {};
  const first = Array.isArray(day.shifts) && isRecord(day.shifts[0]) ? day.shifts[0].from : undefined;
  return day.start === undefined && typeof first === "string" ? first : null;
}

/** `where`: "of the plan", or the day whose plan `json` is, "on Thursday". */
export function readHour(
  asked: Asked["among"][number],
  at: At,
  json: unknown,
  where: string,
): { found: HourAsked | null; faults: Fault[] } {
  const [what, { from, to, step }, name] = named(asked);
  const known = movables(what, json);
  const key = what === "gap" ? "load" : "name";
  const movable = known.find((each) => each.name === name);
  if (movable === undefined)
    return {
      found: null,
      faults: [
        unknownFault(
          `${NOUNS[what]} ${where}${what === "gap" ? " that repeats" : ""}`,
          name,
          [...at, what, key],
          known,
        ),
      ],
    };
  const faults = boundFaults({ ...movable, what, from, to, step }, [...at, what], startSeconds(json));
  return { found: faults.length > 0 ? null : { ...movable, what, from, to, step }, faults };
}

/** The same text for the same thing. */
export function hourKey(asked: Asked["among"][number]): string {
  const [what, , name] = named(asked);
  return `${what} ${name}`;
}

function named(asked: Asked["among"][number]): [Hour, { from: number; to: number; step: number }, string] {
  if (asked.load !== undefined) return ["load", asked.load, asked.load.name];
  if (asked.gap !== undefined) return ["gap", asked.gap, asked.gap.load];
  if (asked.shift !== undefined) return ["shift", asked.shift, asked.shift.name];
  return ["break", asked.break!, asked.break!.name];
}

const NOUNS: Record<Hour, string> = { load: "load", gap: "load", shift: "shift", break: "break" };

export function unknownFault(noun: string, name: string, at: At, known: readonly { name: string }[]): Fault {
  const names = known.map((each) => each.name);
  return {
    path: formatPath(at),
    found: `'${name}' is no ${noun}`,
    allowed: names.length === 0 ? "there is none, so none can be moved" : listWords(names),
    remedy: nearestWords(name, names, names.length === 0 ? "leave it out" : "name one of these"),
  };
}

/** The plan's own moment is one of those that are tried: what is gained is told against it. */
function boundFaults({ what, today, from, to, step }: HourAsked, at: At, start: number | null): Fault[] {
  const now = momentWords(what, today);
  const fault = (key: string, found: string, allowed: string, remedy = ""): Fault => {
    return { path: formatPath([...at, key]), found, allowed, remedy };
  };
  if (from > today) return [fault("from", `${momentWords(what, from)}, but today it is ${now}`, `${now} or less`)];
  if (to < today) return [fault("to", `${momentWords(what, to)}, but today it is ${now}`, `${now} or more`)];
  const count = Math.floor((today - from) / step) + Math.floor((to - today) / step) + 1;
  if (count > MAX_MOMENTS)
    return [fault("step", `${count} moments`, `${MAX_MOMENTS} moments at most`, "write a longer step")];
  if (count === 1) return [fault("step", "nothing to move", "a step that leads to another moment within from and to")];
  if (what === "shift" && start !== null && from < start) {
    const remedy = `give the plan's "day" an earlier "start", or write "from": "${writeClock(start)}"`;
    return [
      fault("from", `${writeClock(from)}, before the plan's day starts`, `${writeClock(start)} or later`, remedy),
    ];
  }
  return [];
}

/** Seconds after midnight at which the plan's day starts. */
function startSeconds(json: unknown): number | null {
  const day = isRecord(json) && isRecord(json.day) ? json.day : {};
  return readClock(day.start ?? startOf(json)).value;
}

export function twiceFaults(keys: readonly string[], at: At): Fault[] {
  return keys.flatMap((key, index): Fault[] => {
    if (keys.indexOf(key) === index) return [];
    const found = `${key} stands twice`;
    return [{ path: formatPath([...at, index]), found, allowed: "each once", remedy: "delete one of them" }];
  });
}

/** Of a plan that was read without fault. */
function movables(what: Hour, json: unknown): Movable[] {
  const plan = isRecord(json) ? json : {};
  const day = isRecord(plan.day) ? plan.day : {};
  const supply = isRecord(plan.supply) ? plan.supply : {};
  const list = { load: supply.loads, gap: supply.loads, shift: day.shifts, break: day.breaks }[what];
  const at = what === "shift" ? ["day", "shifts"] : what === "break" ? ["day", "breaks"] : ["supply", "loads"];
  return (Array.isArray(list) ? list.filter(isRecord) : []).flatMap((each): Movable[] => {
    const name = String(each.name);
    const today = what === "gap" ? gapOf(each) : readClock(what === "shift" ? each.from : each.at).value;
    const ends = what === "shift" ? readClock(each.to).value : null;
    return today === null ? [] : [{ name, at: [...at, name], today, ends, many: each.repeat !== undefined }];
  });
}

function gapOf({ repeat }: Record<string, unknown>): number | null {
  return isRecord(repeat) ? readQuantity(time, repeat.every).value : null;
}
