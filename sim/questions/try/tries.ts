import { type Fault, type Plan, setPathInPlace } from "../../asked/plan/index.ts";
import type { Reading } from "../../text/units/index.ts";
import { extra, fewer, late, lorries } from "./heads.ts";
import { down, moveBreak, moveShift, secondShift } from "./hours.ts";
import { ill, more, move, wages } from "./people.ts";
import { PlanDraft } from "./planDraft.ts";
import { faster, places, slower } from "./stations.ts";
import type { Told } from "./told.ts";
import { dayDraft, daysNamed, onDay } from "./weekDays.ts";

type Change = (draft: PlanDraft, written: string) => Reading<Told>;

/** What each option does to a plan; of those in the list several may be written at once, with a comma between them. */
const CHANGES: Record<string, Change> = {
  ...{ ill, more, move, wages, extra, fewer, lorries, late, down, places, faster, slower },
  ...{ break: moveBreak, shift: moveShift, "second-shift": secondShift },
};
const SEVERAL = new Set(["ill", "more", "move", "late", "down", "places", "faster", "slower", "break", "shift"]);

/** Options that change the plan. */
export const TRY_OPTIONS = Object.keys(CHANGES);

/** Says of which days of a week what follows is; before it, of every day. */
export const ON = "on";

/** Between two tries. */
export const OR = "or";

/** An option as it was written, in the order of the command line; `OR` begins another try. */
export interface WrittenOption {
  option: string;
  text: string;
}

/** One try: a variant of the plan. */
export interface Try {
  /** "two ill at evisceration, one more at trim". */
  name: string;
  /** Path -> value, as a study sets them. */
  set: Record<string, unknown>;
  notes: string[];
  /** Days of a week that it changes; "" for what it changes on all of them, or in a plan without a week. */
  days: string[];
}

export type TriesReading = { tries: Try[]; faults: [] } | { tries: null; faults: Fault[] };

/**
 * What was written as tries of the plan, or all that is wrong with it; none where nothing was written: then today's plan is
 * asked about. `json`: the sound plan's file.
 */
export function readTries(plan: Plan, json: unknown, written: readonly WrittenOption[]): TriesReading {
  if (written.length === 0) return { tries: [], faults: [] };
  const groups = grouped(written)
    .flatMap((group) => ofEachCrew(plan, group))
    .flatMap(apart);
  if (groups.length > MAX_TRIES) return { tries: null, faults: [tooMany(groups.length)] };
  const all = namedApart(groups.map((group) => readTry(plan, json, group)));
  const faults = [...groups.flatMap(emptyGroup), ...all.flatMap((each) => each.faults)];
  if (faults.length > 0) return { tries: null, faults };
  const again = all.flatMap(({ set, name }, index) =>
    all.findIndex((other) => isSame(other.set, set)) < index ? [name] : [],
  );
  if (again.length > 0) return { tries: null, faults: again.map(twice) };
  return { tries: toldApart(all.map(({ name, set, notes, days }) => ({ name, set, notes, days }))), faults: [] };
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function twice(name: string): Fault {
  return {
    path: "--or",
    found: `'${name}' is tried twice`,
    allowed: "different tries",
    remedy: "take one of them out",
  };
}

/** Names that were cut short can meet. */
function toldApart(tries: readonly Try[]): Try[] {
  return tries.map((each, index) => {
    const before = tries.slice(0, index).filter(({ name }) => name === each.name).length;
    const name = [...each.name]
      .slice(0, LONGEST_NAME - 5)
      .join("")
      .trimEnd();
    return before === 0 ? each : { ...each, name: `${name} (${before + 1})` };
  });
}

function grouped(written: readonly WrittenOption[]): WrittenOption[][] {
  const groups: WrittenOption[][] = [[]];
  for (const each of written) {
    if (each.option === OR) groups.push([]);
    else groups.at(-1)!.push(each);
  }
  return groups;
}

function emptyGroup(group: readonly WrittenOption[], index: number): Fault[] {
  if (group.length > 0) return [];
  const remedy = "write for example --ill evisceration=1; gambrel try --help shows more";
  return [
    { path: "--or", found: `try ${index + 1} has no option`, allowed: "at least one option in each try", remedy },
  ];
}

/** More than anybody reads, and a slip of the keyboard makes many. */
const MAX_TRIES = 40;

function tooMany(count: number): Fault {
  return {
    path: "gambrel try",
    found: `${count} tries`,
    allowed: `at most ${MAX_TRIES}`,
    remedy: "write fewer values with 'or' between them",
  };
}

/** "each=1": where is one person more worth most? A try of every crew that has somebody. */
function ofEachCrew({ crews }: Plan, group: readonly WrittenOption[]): WrittenOption[][] {
  const at = group.findIndex(({ option, text }) => option === "more" && /^each\s*=/.test(text));
  if (at === -1 || crews.some(({ name }) => name === "each")) return [[...group]];
  const people = group[at]!.text.replace(/^each\s*=/, "");
  const manned = crews.filter((crew) => crew.people.some((number) => number > 0));
  return manned.map(({ name }) => group.with(at, { option: "more", text: `${name}=${people}` }));
}

/** "lunch=11:45 or 12:15" is two tries; values of several options are all put together. */
function apart(group: readonly WrittenOption[]): WrittenOption[][] {
  const parts = group.flatMap(({ option, text }) =>
    (SEVERAL.has(option) ? text.split(",") : [text]).map((part) => ({ option, text: part.trim() })),
  );
  return parts.reduce<WrittenOption[][]>(
    (tries, part) => tries.flatMap((before) => alternatives(part).map((one) => [...before, one])),
    [[]],
  );
}

/** Of "400 or 800 at 12:00" the numbers, of "lunch=11:45 or 12:15" what stands behind "=", else whole pieces. */
function alternatives({ option, text }: WrittenOption): WrittenOption[] {
  const [, numbers, rest = ""] = /^(\d+(?: or \d+)+)(.*)$/.exec(text) ?? [];
  const at = numbers === undefined ? text.lastIndexOf("=") + 1 : 0;
  const pieces = (numbers ?? text.slice(at)).split(" or ");
  return pieces.map((piece) => ({ option, text: `${text.slice(0, at)}${piece.trim()}${rest}` }));
}

interface TryParts {
  words: string[];
  set: Record<string, unknown>;
  notes: string[];
  days: string[];
  faults: Fault[];
}

/** Each part changes what those before it made of the plan, also where two of them are of one day. */
function readTry(plan: Plan, json: unknown, group: readonly WrittenOption[]) {
  const draft = structuredClone(json);
  const parts = byDay(group).map((part) => {
    const read = readPart(plan, draft, part);
    for (const [path, value] of Object.entries(read.set)) setPathInPlace(draft, path, value);
    return read;
  });
  return joined(parts);
}

/** By what each try changes; where that is too long for a name, and it goes on from the first try, by what it does beyond that. */
function namedApart<Part extends TryParts>(all: readonly Part[]): (Part & { name: string })[] {
  const told = all.map((each) => dayOnce(each));
  const first = told[0]?.words ?? [];
  return all.map((each, index) => {
    const { words, day } = told[index]!;
    const tooLong = [...words.join(", "), ...day].length > LONGEST_NAME;
    const further = words.length > first.length && first.every((one, at) => one === words[at]);
    const goesOn = tooLong && index > 0 && further && day === told[0]!.day;
    const own = goesOn ? ["the same", ...words.slice(first.length)] : words;
    const suffix = goesOn ? "" : day;
    return { ...each, name: `${shortName(own, LONGEST_NAME - suffix.length)}${suffix}` };
  });
}

/** " on Thursday" is said once where all is of one day. */
function dayOnce({ words, days }: TryParts): { words: string[]; day: string } {
  const day = days.length === 1 && days[0] !== "" ? ` on ${days[0]}` : "";
  return { words: words.map((one) => (one.endsWith(day) ? one.slice(0, one.length - day.length) : one)), day };
}

/** Options behind the same "on" are of the same days. */
function byDay(group: readonly WrittenOption[]): { on: WrittenOption | null; options: WrittenOption[] }[] {
  const parts: { on: WrittenOption | null; options: WrittenOption[] }[] = [];
  for (const each of group) {
    if (each.option === ON) parts.push({ on: each, options: [] });
    else if (parts.length === 0) parts.push({ on: null, options: [each] });
    else parts.at(-1)!.options.push(each);
  }
  return parts;
}

function readPart(plan: Plan, json: unknown, { on, options }: ReturnType<typeof byDay>[number]): TryParts {
  if (on === null) return readOptions(new PlanDraft(plan, json), options);
  const days = daysNamed(plan, on.text);
  if (days.fault !== null)
    return { words: [], set: {}, notes: [], days: [], faults: [{ path: `--${ON} ${on.text}`, ...days.fault }] };
  if (options.length === 0) return { words: [], set: {}, notes: [], days: [], faults: [nothingOn(on.text)] };
  return joined(
    days.value.map((name) => {
      const part = readOptions(dayDraft(plan, json, name), options);
      return {
        ...part,
        words: part.words.map((words) => `${words} on ${name}`),
        set: onDay(json, name, part.set),
        days: [name],
      };
    }),
  );
}

function nothingOn(day: string): Fault {
  const found = "nothing is tried on that day";
  const remedy = `write for example --on ${day} --ill evisceration=1`;
  return { path: `--${ON} ${day}`, found, allowed: "at least one option behind it", remedy };
}

function joined(parts: readonly TryParts[]): TryParts {
  return {
    words: parts.flatMap(({ words }) => words),
    set: Object.assign({}, ...parts.map(({ set }) => set)),
    days: [...new Set(parts.flatMap(({ days }) => days))],
    notes: [...new Set(parts.flatMap(({ notes }) => notes))],
    faults: parts.flatMap(({ faults }) => faults),
  };
}

function readOptions(draft: PlanDraft, group: readonly WrittenOption[]): TryParts {
  const readings = group.map(({ option, text }) => ({ path: `--${option} ${text}`, ...CHANGES[option]!(draft, text) }));
  const told = readings.flatMap(({ value }) => (value === null ? [] : [value]));
  const faults = readings.flatMap(({ path, fault }): Fault[] => (fault === null ? [] : [{ path, ...fault }]));
  const notes = [...new Set(told.flatMap(({ notes }) => notes))];
  return { words: told.map(({ words }) => words), set: draft.changes(), notes, days: [""], faults };
}

const LONGEST_NAME = 60;

/** As many as a name of the study file holds. */
function shortName(words: readonly string[], longest: number): string {
  for (let shown = words.length; shown > 0; shown--) {
    const left = words.length - shown;
    const name = `${words.slice(0, shown).join(", ")}${left === 0 ? "" : ` and ${left} ${left === 1 ? "change" : "changes"} more`}`;
    if ([...name].length <= longest) return name;
  }
  return [...(words[0] ?? "")]
    .slice(0, longest - 2)
    .join("")
    .trimEnd();
}
