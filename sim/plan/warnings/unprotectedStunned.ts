import type { Fault } from "../fault.ts";
import { readPoint } from "../readPoint.ts";
import { faultAt, type Located, located, locatedList } from "../rules/located.ts";
import { workplacesOf } from "../rules/stages.ts";

/** A stage that stuns says so in its name. */
const STUNS = /stun/iu;

/**
 * A head that is stunned is to be stuck before it wakes. Warns where nothing keeps a head from being stunned while the next place of work
 * has no room for it, where breaks may begin with a stunned head on the line, and where a hold cannot know of breakdowns between the
 * two and nobody is called to a head that one of them leaves waiting.
 */
export function unprotectedStunned(json: unknown): Fault[] {
  const places = workplacesOf(json);
  const names = places.map(({ value }) => String(value.name));
  const at = names.findIndex((name) => STUNS.test(name));
  if (at === -1 || at === names.length - 1) return [];
  const care = located(json, "stunned");
  const isCovered = care !== null && covers(names, at, String(care.value.from), String(care.value.to));
  if (isCovered && care.value.hold !== false) return withoutHelp(json, care, names);
  return [...withoutGate(json, places[at]!, names, at), ...withoutSafeStop(json, names, at)];
}

function withoutHelp(json: unknown, care: Located, names: readonly string[]): Fault[] {
  if ((care.value.late ?? null) !== null) return [];
  const [first, last] = [names.indexOf(String(care.value.from)), names.indexOf(String(care.value.to))];
  const between = workplacesOf(json).filter((_, index) => index > first && index <= last);
  const breaking = between.find(({ at }) => locatedList(json, ...at, "breakdowns").length > 0);
  if (breaking === undefined) return [];
  const found = `a breakdown at '${breaking.value.name}' may leave a stunned head waiting: nobody is called to it`;
  return [faultAt(care.at, found, "", 'add "late": who stuns it again, or sticks it where it is')];
}

function withoutGate(json: unknown, stunning: Located, names: readonly string[], at: number): Fault[] {
  const spans = locatedList(json, "gates").map(({ value }) => [placeOf(value.from), placeOf(value.to)] as const);
  const isHeld = spans.some(([from, to]) => from !== null && to !== null && covers(names, at, from, to));
  if (isHeld) return [];
  const found = `nothing keeps a head from being stunned while '${names[at + 1]}' has no room: it may wait and wake`;
  const remedy = `add "stunned" from "${names[at]}" to the station that sticks; it holds heads back`;
  return [faultAt(stunning.at, found, "", remedy)];
}

function withoutSafeStop(json: unknown, names: readonly string[], at: number): Fault[] {
  if (locatedList(json, "day", "breaks").length === 0) return [];
  const stretch = located(json, "day", "safeStop")?.value;
  if (stretch !== undefined && covers(names, at, String(stretch.from), String(stretch.to))) return [];
  const found = "a break may begin while a stunned head waits: no stretch is emptied before breaks";
  const remedy = `add "safeStop" from "${names[at]}" to the end of bleeding`;
  return [faultAt(["day"], found, "", remedy)];
}

/** The stage of a point on the way; "" for the way out. */
function placeOf(written: unknown): string | null {
  const point = readPoint(written).value;
  return point === null ? null : (point.stage ?? (point.moment === "exit" ? "" : null));
}

/** From stunning or before it to a place behind it. */
function covers(names: readonly string[], at: number, from: string, to: string): boolean {
  const [first, last] = [names.indexOf(from), to === "" ? names.length : names.indexOf(to)];
  return first !== -1 && first <= at && last > at;
}
