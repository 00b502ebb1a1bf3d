import type { Fault } from "../fault.ts";
import { readPoint } from "../readPoint.ts";
import { faultAt, type Located, located, locatedList } from "../rules/located.ts";
import { workplacesOf } from "../rules/stages.ts";
import { protectionIn, type StunnedProtection } from "./stunnedProtection.ts";

/**
 * A head that is stunned is to be stuck before it wakes. Warns where nothing keeps a head from being stunned while the next place of work
 * has no room for it, and where breaks may begin with a stunned head on the line.
 */
export function unprotectedStunned(json: unknown): Fault[] {
  const places = workplacesOf(json);
  const stretch = located(json, "day", "safeStop")?.value;
  const found = protectionIn({
    places: places.map(({ value }) => String(value.name)),
    gates: locatedList(json, "gates").flatMap(({ value }) => {
      const [from, to] = [placeOf(value.from), placeOf(value.to)];
      return from === null || to === null ? [] : [[from, to] as const];
    }),
    breaks: locatedList(json, "day", "breaks").length,
    safeStop: stretch === undefined ? null : [String(stretch.from), String(stretch.to)],
  });
  if (found === null) return [];
  const { at } = places.find(({ value }) => String(value.name) === found.stunning)!;
  return [...(found.hasGate ? [] : [withoutGate(at, found)]), ...(found.breaksAreSafe ? [] : [withoutSafeStop(found)])];
}

function withoutGate(at: Located["at"], { stunning, next }: StunnedProtection): Fault {
  const found = `nothing keeps a head from being stunned while '${next}' has no room: it may wait and wake`;
  const remedy = `add a gate from "start of ${stunning}" to "start of ${next}" for as many as can be worked on there`;
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
