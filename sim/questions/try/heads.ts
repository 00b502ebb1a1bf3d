import { expandedLoadNames, isRecord } from "../../asked/plan/index.ts";
import { type Reading, read, readClock, readQuantity, refused, time, writeClock } from "../../text/units/index.ts";
import { assigned, countOf } from "./named.ts";
import type { PlanDraft } from "./planDraft.ts";
import { cannot, type Told, told } from "./told.ts";

const MAX_HEADS = 10_000_000;
const LOADS = ["supply", "loads"];

/** A lorry as a plan file writes it, once. */
interface Lorry extends Record<string, unknown> {
  name: string;
  at: string;
  crates: number;
  headsPerCrate: number;
}

/** "800 at 12:00": more animals, on lorries like today's last one. */
export function extra(draft: PlanDraft, written: string): Reading<Told> {
  const loads = draft.list(...LOADS) as Lorry[];
  const example = loads.length > 0 ? '--extra "800 at 12:00"' : "--extra 800";
  const [, number = "", hour] = /^(\d+)(?: heads)?(?: at (\S+))?$/.exec(written) ?? [];
  const count = countOf(number === "" ? written : number, MAX_HEADS, example);
  if (count.fault !== null) return count;
  if (loads.length === 0) {
    if (hour !== undefined)
      return refused(
        "this plan has no lorries, so its animals come at no hour",
        "a number of heads",
        `write for example ${example}`,
      );
    return changeHeads(draft, count.value, `${count.value} heads more`);
  }
  if (hour === undefined)
    return refused(
      `'${written}' does not say when they come`,
      "a number, 'at' and a clock time",
      `write for example ${example}`,
    );
  const due = readClock(hour);
  if (due.fault !== null) return due;
  draft.put(LOADS, [...loads, ...lorriesWith(loads, count.value, hour)]);
  return told(`${count.value} heads more at ${hour}`, [`They come on lorries like '${String(loads.at(-1)!.name)}'.`]);
}

/** "500": fewer animals, left off the lorries that come last. */
export function fewer(draft: PlanDraft, written: string): Reading<Told> {
  const count = countOf(written.replace(/ heads$/, ""), MAX_HEADS, "--fewer 500");
  if (count.fault !== null) return count;
  const words = `${count.value} heads fewer`;
  const loads = draft.list(...LOADS) as Lorry[];
  if (loads.length === 0) return changeHeads(draft, -count.value, words);
  const all = eachLorry(loads);
  const heads = all.reduce((sum, lorry) => sum + headsOn(lorry), 0);
  if (count.value >= heads) return tooFew(heads);
  draft.put(LOADS, withoutLast(all, count.value));
  return told(words, ["The lorries that come last bring fewer, or do not come."]);
}

/** "spread", "every 45 min", "first at 05:00", "last at 12:00", and what goes together of these; or "in waves at 05:00 and 10:00". */
export function lorries(draft: PlanDraft, written: string): Reading<Told> {
  const loads = draft.list(...LOADS) as Lorry[];
  if (loads.length === 0)
    return cannot(
      "this plan has no lorries: its animals come one by one or stand ready",
      "write --extra or --fewer to change how many",
    );
  const all = eachLorry(loads).sort((a, b) => secondsOf(a) - secondsOf(b));
  const [, waves] = /^in waves at (.+)$/.exec(written) ?? [];
  if (waves !== undefined) return inWaves(draft, all, waves);
  const wish = timesWish(written);
  if (wish.fault !== null) return wish;
  if (all.length === 1 && wish.value.first === null && wish.value.last === null)
    return cannot("only one lorry comes, so there is nothing to spread", '"first at 07:00" moves it');
  const due = dueTimes(all.map(secondsOf), wish.value);
  if (due.some((seconds) => seconds < 0))
    return cannot(
      `'${written}' would have the first lorry come before midnight`,
      "write fewer minutes, or a later hour",
    );
  if (due.every((seconds, index) => seconds === secondsOf(all[index]!)))
    return cannot(
      `the lorries come like that already ('${written}')`,
      `they come at ${all.map(({ at }) => at).join(", ")}`,
    );
  draft.put(
    LOADS,
    all.map((lorry, index) => ({ ...lorry, at: writeClock(due[index]!) })),
  );
  return told(`lorries ${written}`, [`The lorries are due at ${due.map(writeClock).join(", ")}.`]);
}

/** Lorries of a wave come together; each wave has as many as another, the first ones of the day in the first. */
function inWaves(draft: PlanDraft, all: readonly Lorry[], written: string): Reading<Told> {
  const hours = written.split(/ and |[ ,]+/).filter((hour) => hour !== "");
  const due: number[] = [];
  for (const hour of hours) {
    const reading = readClock(hour);
    if (reading.fault !== null) return reading;
    due.push(reading.value);
  }
  const example = 'write for example --lorries "in waves at 05:00 and 10:00"';
  if (due.length < 2) return refused(`'${written}' is one hour`, "two hours or more", example);
  if (due.some((seconds, wave) => wave > 0 && seconds <= due[wave - 1]!))
    return refused(`'${written}' has a wave before the one in front of it`, "hours in their order", example);
  if (due.length > all.length)
    return cannot(`${all.length} lorries come, too few for ${due.length} waves`, "name fewer hours");
  const moved = all.map((lorry, index) => ({ ...lorry, at: hours[Math.floor((index * due.length) / all.length)]! }));
  draft.put(LOADS, moved);
  const counts = hours.map((hour) => `${moved.filter(({ at }) => at === hour).length} at ${hour}`);
  return told(`lorries in waves at ${hours.join(" and ")}`, [`Of the ${all.length} lorries ${counts.join(", ")}.`]);
}

/** "first=60 min", "3=20 min" or by the lorry's name: that lorry alone comes so much later. */
export function late(draft: PlanDraft, written: string): Reading<Told> {
  const example = '--late "first=60 min"';
  const parts = assigned(written, example);
  if (parts.fault !== null) return parts;
  const all = eachLorry(draft.list(...LOADS) as Lorry[]).sort((a, b) => secondsOf(a) - secondsOf(b));
  if (all.length === 0)
    return cannot(
      "this plan has no lorries: its animals come one by one or stand ready",
      "--lorries and --late need lorries",
    );
  const which = lorryNamed(parts.value[0], all);
  if (which.fault !== null) return which;
  const by = readQuantity(time, parts.value[1]);
  if (by.fault !== null) return by;
  if (!(by.value > 0))
    return refused(`'${parts.value[1]}' is no time later`, "a time above 0", `write for example ${example}`);
  const index = which.value;
  const at = writeClock(secondsOf(all[index]!) + by.value);
  draft.put(
    LOADS,
    all.map((lorry, place) => (place === index ? { ...lorry, at } : lorry)),
  );
  return told(`lorry ${index + 1} late by ${parts.value[1]}`, [
    `It is due at ${at} instead of ${all[index]!.at}; the others as planned.`,
  ]);
}

/** By its place in the order of the day, or by name. */
function lorryNamed(written: string, all: readonly Lorry[]): Reading<number> {
  const place = written === "first" ? 1 : written === "last" ? all.length : Number(/^\d+$/.exec(written)?.[0]);
  if (place >= 1 && place <= all.length) return read(place - 1);
  const byName = all.findIndex(({ name }) => name === written);
  return byName >= 0
    ? read(byName)
    : refused(
        `'${written}' is none of the ${all.length} lorries`,
        `'first', 'last', 1 to ${all.length}, or a lorry's name`,
        'write for example --late "first=60 min"',
      );
}

/** What was asked of the lorries' times, in seconds; null where nothing was. */
interface TimesWish {
  every: number | null;
  first: number | null;
  last: number | null;
}

const TIMES =
  "'spread', 'every' with a time, 'first at' and 'last at' with clock times, 'in waves at' with clock times";
const TIMES_EXAMPLE = 'write for example --lorries "first at 05:00 every 45 min"';

function timesWish(written: string): Reading<TimesWish> {
  const parts = [...written.matchAll(/(spread|every (\d[\d.]* ?[a-z]+)|(first|last) at (\S+))(?: |$)/g)];
  const rest = parts.reduce((text, [part]) => text.replace(part, ""), written);
  if (parts.length === 0 || rest.trim() !== "")
    return refused(`'${written}' cannot be read here`, TIMES, TIMES_EXAMPLE);
  const wish: TimesWish = { every: null, first: null, last: null };
  for (const [, , span, end, hour] of parts) {
    const reading = span === undefined ? (hour === undefined ? read(null) : readClock(hour)) : readQuantity(time, span);
    if (reading.fault !== null) return reading;
    if (span !== undefined) wish.every = reading.value;
    else if (end !== undefined) wish[end as "first" | "last"] = reading.value;
  }
  if (
    wish.every !== null &&
    (parts.length > 2 || (wish.first !== null && wish.last !== null) || written.includes("spread"))
  )
    return refused(
      `'${written}' says more than can be kept at once`,
      "'every' with one of 'first at' and 'last at', or 'spread' with both",
      TIMES_EXAMPLE,
    );
  if (wish.first !== null && wish.last !== null && wish.last <= wish.first)
    return refused(`'${written}' has the last lorry before the first`, "a later hour for the last", TIMES_EXAMPLE);
  if (wish.every === 0) return refused(`'${written}' has all lorries at once`, "a time above 0", TIMES_EXAMPLE);
  return read(wish);
}

/** Due times in order. With nothing but a first (or last) hour all lorries move together. */
function dueTimes(today: readonly number[], { every, first, last }: TimesWish): number[] {
  const steps = today.length - 1;
  const [begin, end] = [today[0]!, today.at(-1)!];
  if (every !== null) {
    const start = first ?? (last === null ? begin : last - steps * every);
    return today.map((_, index) => start + index * every);
  }
  if ((first === null) !== (last === null)) {
    const shift = first === null ? last! - end : first - begin;
    return today.map((seconds) => seconds + shift);
  }
  const [from, to] = [first ?? begin, last ?? end];
  return today.map((_, index) => (steps === 0 ? from : from + 60 * Math.round((index * (to - from)) / steps / 60)));
}

function changeHeads(draft: PlanDraft, by: number, words: string): Reading<Told> {
  const kind = isRecord(draft.at("supply", "stream")) ? "stream" : "saturated";
  const heads = Number(draft.at("supply", kind, "heads"));
  if (heads + by < 1) return tooFew(heads);
  draft.put(["supply", kind, "heads"], heads + by);
  return told(words);
}

function tooFew(heads: number): Reading<never> {
  return refused(`only ${heads} heads come in all`, `1 to ${heads - 1}`, "name fewer");
}

/** Lorries of the size of the last one, and one with the rest. */
function lorriesWith(loads: readonly Lorry[], heads: number, at: string): Lorry[] {
  const { repeat: _, comes: __, ...like } = loads.at(-1)!;
  const full = headsOn(like as Lorry);
  const sizes = Array.from({ length: Math.ceil(heads / full) }, (_, index) => Math.min(full, heads - index * full));
  const taken = new Set(loads.flatMap(expandedLoadNames));
  return sizes.flatMap((size) => {
    let name = "extra lorry";
    for (let number = 2; taken.has(name); number++) name = `extra lorry ${number}`;
    taken.add(name);
    return withHeads({ ...like, name, at } as Lorry, size);
  });
}

/** The lorry with so many heads: in whole crates, and what is left in one crate more. */
function withHeads(lorry: Lorry, heads: number): Lorry[] {
  const { headsPerCrate, name } = lorry;
  const crates = Math.floor(heads / headsPerCrate);
  const rest = heads % headsPerCrate;
  const last = { ...lorry, name: crates === 0 ? name : restName(name), crates: 1, headsPerCrate: rest };
  return [...(crates === 0 ? [] : [{ ...lorry, crates }]), ...(rest === 0 ? [] : [last])];
}

const LONGEST_NAME = 60;
const REST = ", last crate";

function restName(name: string): string {
  return `${[...name]
    .slice(0, LONGEST_NAME - REST.length)
    .join("")
    .trimEnd()}${REST}`;
}

/** Repeats written out. */
function eachLorry(loads: readonly Lorry[]): Lorry[] {
  return loads.flatMap(({ repeat, ...lorry }) => {
    const every = isRecord(repeat) ? readQuantity(time, repeat.every).value! : 0;
    const at = readClock(lorry.at).value!;
    return expandedLoadNames({ ...lorry, repeat }).map(
      (name, index) => ({ ...lorry, name, at: writeClock(at + index * every) }) as Lorry,
    );
  });
}

/** In the order of the list, since lorries are told apart by their place in it. */
function withoutLast(all: readonly Lorry[], heads: number): Lorry[] {
  const latest = all.map((_, index) => index).sort((a, b) => secondsOf(all[b]!) - secondsOf(all[a]!) || b - a);
  let left = heads;
  const kept = new Map<number, Lorry[]>();
  for (const index of latest) {
    const own = headsOn(all[index]!);
    const off = Math.min(left, own);
    left -= off;
    kept.set(index, off === 0 ? [all[index]!] : withHeads(all[index]!, own - off));
  }
  return all.flatMap((_, index) => kept.get(index)!);
}

function headsOn({ crates, headsPerCrate }: Lorry): number {
  return crates * headsPerCrate;
}

function secondsOf({ at }: Lorry): number {
  return readClock(at).value!;
}
