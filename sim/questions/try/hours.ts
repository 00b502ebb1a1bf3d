import { isRecord } from "../../asked/plan/index.ts";
import { steps } from "../../day/line/index.ts";
import { type Reading, read, readClock, refused, SECONDS_PER_DAY, writeClock } from "../../text/units/index.ts";
import { assigned, namedOne } from "./named.ts";
import { crewNamed } from "./people.ts";
import type { PlanDraft } from "./planDraft.ts";
import { cannot, type Told, told } from "./told.ts";

const LONGEST_NAME = 60;

/** "lunch=12:15": a break begins then; it keeps its length. */
export function moveBreak(draft: PlanDraft, written: string): Reading<Told> {
  const names = namesOf(draft, "breaks");
  if (names.length === 0) return cannot("this plan has no breaks, so none can be moved");
  const parts = assigned(written, "--break lunch=12:15");
  if (parts.fault !== null) return parts;
  const name = namedOne(parts.value[0], names, "a break");
  if (name.fault !== null) return name;
  const at = readClock(parts.value[1]);
  if (at.fault !== null) return at;
  const hour = writeClock(at.value);
  if (readClock(draft.at("day", "breaks", name.value, "at")).value === at.value)
    return cannot(`'${name.value}' begins at ${hour} already`, "write another hour");
  draft.put(["day", "breaks", name.value, "at"], hour);
  return told(`${name.value} at ${hour}`);
}

/** "day=05:30-13:30". Breaks stay where they are. */
export function moveShift(draft: PlanDraft, written: string): Reading<Told> {
  const parts = assigned(written, "--shift day=05:30-13:30");
  if (parts.fault !== null) return parts;
  const name = namedOne(parts.value[0], namesOf(draft, "shifts"), "a shift");
  if (name.fault !== null) return name;
  const span = spanOf(parts.value[1], "--shift day=05:30-13:30");
  if (span.fault !== null) return span;
  const { from, to } = span.value;
  const start = readClock(draft.at("day", "start")).value;
  if (start !== null && from < start) draft.put(["day", "start"], writeClock(from));
  draft.put(["day", "shifts", name.value, "from"], writeClock(from));
  draft.put(["day", "shifts", name.value, "to"], writeClock(to));
  return told(
    `shift ${name.value} ${spanWords(span.value)}`,
    namesOf(draft, "breaks").length === 0 ? [] : ["Breaks keep their hours."],
  );
}

/** "14:00-17:00", "14:00-17:00 as day", "14:00-17:00 with evisceration=2,hanging=1": the other crews as in the shift before. */
export function secondShift(draft: PlanDraft, written: string): Reading<Told> {
  const example = '--second-shift "14:00-17:00 with evisceration=2,hanging=1"';
  const [, hours = "", as, numbers] = /^(\S+)(?: as (.+?))?(?: with (.+))?$/.exec(written) ?? [];
  const span = spanOf(hours === "" ? written : hours, example);
  if (span.fault !== null) return span;
  const names = namesOf(draft, "shifts");
  const like = as === undefined ? read(names.at(-1)!) : namedOne(as.trim(), names, "a shift");
  if (like.fault !== null) return like;
  const given = peopleGiven(draft, numbers, example);
  if (given.fault !== null) return given;
  const name = freeName("second shift", names);
  for (const crew of draft.list("crews")) manShift(draft, crew, { name, like: like.value, given: given.value });
  const { from, to } = span.value;
  draft.put(["day", "shifts"], [...draft.list("day", "shifts"), { name, from: writeClock(from), to: writeClock(to) }]);
  return told(`${name} ${spanWords(span.value)}`, [
    `In the ${name} every crew has the people that it has in '${like.value}'${numbers === undefined ? "" : `, but for ${numbers}`}.`,
    ...hangingNote(draft, from),
  ]);
}

/** "skinning=09:00-10:00": nothing is worked there then. */
export function down(draft: PlanDraft, written: string): Reading<Told> {
  const example = "--down skinning=09:00-10:00";
  const parts = assigned(written, example);
  if (parts.fault !== null) return parts;
  const name = namedOne(
    parts.value[0],
    steps(draft.plan).map((step) => step.name),
    "a station or chain",
  );
  if (name.fault !== null) return name;
  const span = spanOf(parts.value[1], example);
  if (span.fault !== null) return span;
  const { from, to } = span.value;
  const breaks = draft.list("day", "breaks");
  const pause = {
    name: freeName(`${name.value} down`, namesOf(draft, "breaks")),
    ...{
      at: writeClock(from),
      length: `${(to - from) / 60} min`,
      ends: "at its time",
      crews: [],
      stages: [name.value],
    },
  };
  draft.put(["day", "breaks"], [...breaks, pause]);
  return told(`${name.value} down ${spanWords(span.value)}`, [
    "The stop is simulated as one that is known beforehand: a head in hand is finished, and a safe stop of the plan is kept.",
  ]);
}

interface Span {
  from: number;
  to: number;
}

/** "09:00-10:00". */
function spanOf(written: string, example: string): Reading<Span> {
  const ends = written.split("-").map((end) => end.trim());
  if (ends.length !== 2)
    return refused(
      `'${written}' has no two clock times`,
      "two clock times with '-' between them",
      `write for example ${example}`,
    );
  const [from, to] = [readClock(ends[0]), readClock(ends[1])];
  if (from.fault !== null) return from;
  if (to.fault !== null) return to;
  if (to.value > from.value) return read({ from: from.value, to: to.value });
  const nextDay = writeClock(to.value + SECONDS_PER_DAY);
  return refused(`'${written}' ends before it begins`, "a later end", `for the next day write ${ends[0]}-${nextDay}`);
}

function spanWords({ from, to }: Span): string {
  return `${writeClock(from)}-${writeClock(to)}`;
}

/** People by crew. */
function peopleGiven(draft: PlanDraft, written: string | undefined, example: string): Reading<Map<string, number>> {
  const given = new Map<string, number>();
  for (const part of written?.split(",") ?? []) {
    const pair = assigned(part, example);
    if (pair.fault !== null) return pair;
    const crew = crewNamed(draft.plan, pair.value[0]);
    if (crew.fault !== null) return crew;
    if (!/^\d{1,3}$/.test(pair.value[1]))
      return refused(
        `'${pair.value[1]}' is not a number of people`,
        "a whole number from 0 to 999",
        `write for example ${example}`,
      );
    given.set(crew.value.crew, Number(pair.value[1]));
  }
  return read(given);
}

interface Manning {
  name: string;
  like: string;
  given: ReadonlyMap<string, number>;
}

/** A crew whose people are one number has as many in every shift, a new one too. */
function manShift(draft: PlanDraft, crew: Record<string, unknown>, { name, like, given }: Manning): void {
  const [crewName, people] = [String(crew.name), crew.people];
  const count = given.get(crewName);
  if (!isRecord(people) && count === undefined) return;
  const byShift = isRecord(people)
    ? people
    : Object.fromEntries(namesOf(draft, "shifts").map((shift) => [shift, people]));
  draft.put(["crews", crewName, "people"], { ...byShift, [name]: count ?? byShift[like] ?? 0 });
}

function hangingNote(draft: PlanDraft, from: number): string[] {
  const stop = readClock(draft.at("day", "closing", "stopHangingAt")).value;
  return stop === null || stop > from
    ? []
    : [`The plan hangs no head after ${writeClock(stop)}, so this shift only finishes what hangs.`];
}

function namesOf(draft: PlanDraft, list: "breaks" | "shifts"): string[] {
  return draft.list("day", list).map(({ name }) => String(name));
}

function freeName(wanted: string, taken: readonly string[]): string {
  const short = [...wanted]
    .slice(0, LONGEST_NAME - 4)
    .join("")
    .trimEnd();
  let name = short;
  for (let number = 2; taken.includes(name); number++) name = `${short} ${number}`;
  return name;
}
