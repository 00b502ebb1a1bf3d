import type { Fault } from "../fault.ts";
import { readPoint } from "../readPoint.ts";
import { faultAt, type Located, located, locatedList } from "../rules/located.ts";
import { workplacesOf } from "../rules/stages.ts";
import { protectionIn, type StunnedProtection } from "./stunnedProtection.ts";

/**
 * A head that is stunned is to be stuck before it wakes. Warns where nothing keeps a head from being stunned while the next place of work
 * has no room for it, where breaks may begin with a stunned head on the line, and where a hold cannot know of breakdowns between the
 * two and nobody is called to a head that one of them leaves waiting.
 */
export function unprotectedStunned(json: unknown): Fault[] {
  const places = workplacesOf(json);
  const names = places.map(({ value }) => String(value.name));
  const stretch = located(json, "day", "safeStop")?.value;
  const care = located(json, "stunned");
  const isHolding = care !== null && care.value.hold !== false;
  const found = protectionIn({
    places: names,
    gates: locatedList(json, "gates").flatMap(({ value }) => {
      const [from, to] = [placeOf(value.from), placeOf(value.to)];
      return from === null || to === null ? [] : [[from, to] as const];
    }),
    breaks: locatedList(json, "day", "breaks").length,
    safeStop: stretch === undefined ? null : [String(stretch.from), String(stretch.to)],
    hold: isHolding ? [String(care.value.from), String(care.value.to)] : null,
  });
  if (found === null) return [];
  const { at } = places.find(({ value }) => String(value.name) === found.stunning)!;
  return [
    ...(isHolding ? withoutHelp(json, care, names) : []),
    ...(found.hasGate ? [] : [withoutGate(at, found)]),
    ...(found.breaksAreSafe ? [] : [withoutSafeStop(found)]),
  ];
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

function withoutGate(at: Located["at"], { stunning, next }: StunnedProtection): Fault {
  const found = `nothing keeps a head from being stunned while '${next}' has no room: it may wait and wake`;
  const remedy = `add "stunned" from "${stunning}" to the station that sticks; it holds heads back`;
  return faultAt(at, found, "", remedy);
}

function withoutSafeStop({ stunning }: StunnedProtection): Fault {
  const found = "a break may begin while a stunned head waits: no stretch is emptied before breaks";
  return faultAt(["day"], found, "", `add "safeStop" from "${stunning}" to the end of bleeding`);
}

/** The stage of a point on the way; "" for the way out. */
function placeOf(written: unknown): string | null {
  const point = readPoint(written).value;
  return point === null ? null : (point.stage ?? (point.moment === "exit" ? "" : null));
}
