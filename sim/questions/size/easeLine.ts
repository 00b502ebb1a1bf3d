import type { LineEstimate } from "../estimate/index.ts";
import type { Demand } from "./demand.ts";
import type { Parts } from "./parts.ts";
import type { Extra } from "./sizeStations.ts";
import type { Zone } from "./zones.ts";

/** What is added next, and in words. */
export interface Eased {
  extra: Extra;
  words: string;
}

/**
 * What to add to a line whose estimate is too low: a position where one station alone is too slow; else half as many
 * places more, and a position where the load is highest, in turn. Null where the demand itself gives what is too little.
 */
export function easeLine(
  extra: Extra,
  { demand, parts, line, round }: { demand: Demand; parts: Parts; line: LineEstimate; round: number },
): Eased | null {
  if (parts.crews.some(({ zone }) => zone !== null)) return easePosts(extra, { demand, parts, line, round });
  const free = parts.stations.filter(({ name }) => figuresOf(demand, name)?.positions === undefined);
  const narrow = line.ceilings.find(({ kind }) => kind !== "crates");
  if (narrow !== undefined && narrow.headsPerSecond < parts.rate.headsPerSecond) {
    return free.some(({ name }) => name === narrow.what) ? onePosition(extra, narrow.what) : null;
  }
  const fullest = free.toSorted((a, b) => b.load - a.load)[0];
  return round % 2 === 1 && fullest !== undefined ? onePosition(extra, fullest.name) : morePlaces(extra, demand, parts);
}

/** The same where posts are pooled: a person where people are too few or have most to do. */
function easePosts(
  extra: Extra,
  { demand, parts, line, round }: { demand: Demand; parts: Parts; line: LineEstimate; round: number },
): Eased | null {
  const narrow = line.ceilings.find(({ kind }) => kind !== "crates");
  const posts = parts.crews.filter(({ zone }) => zone !== null);
  if (narrow !== undefined && narrow.headsPerSecond < parts.rate.headsPerSecond) {
    const short = posts.find(({ name }) => narrow.kind === "people" && name === narrow.what);
    if (short !== undefined) return onePerson(extra, short.zone!);
    const free = figuresOf(demand, narrow.what)?.positions === undefined;
    return free && parts.stations.some(({ name }) => name === narrow.what) ? onePosition(extra, narrow.what) : null;
  }
  const fullest = posts.toSorted((a, b) => b.load - a.load)[0]!;
  return round % 2 === 1 ? onePerson(extra, fullest.zone!) : morePlaces(extra, demand, parts);
}

function onePerson(extra: Extra, zone: Zone): Eased {
  const people = new Map(extra.people).set(zone, (extra.people.get(zone) ?? 0) + 1);
  return { extra: { ...extra, people }, words: `one more person: ${zone}` };
}

function onePosition(extra: Extra, name: string): Eased {
  const positions = new Map(extra.positions).set(name, (extra.positions.get(name) ?? 0) + 1);
  return { extra: { ...extra, positions }, words: `one more position at ${name}` };
}

/** Where there are none there are to be none: between stunning and sticking. */
function morePlaces(extra: Extra, demand: Demand, { stations }: Parts): Eased | null {
  const open = stations.filter(
    ({ name, places }) => places !== null && places > 0 && figuresOf(demand, name)?.places === undefined,
  );
  if (open.length === 0) return null;
  const places = new Map(extra.places);
  for (const { name, places: now } of open) places.set(name, (places.get(name) ?? 0) + Math.ceil(now! / 2));
  return { extra: { ...extra, places }, words: "half as many places more before every station" };
}

function figuresOf({ steps }: Demand, name: string) {
  return steps.find((step) => step.name === name)?.figures;
}
