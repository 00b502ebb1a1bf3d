import { readQuantity, readShare, time } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { isRecord } from "../isRecord.ts";
import { type CrewUse, crewUses } from "./crewUses.ts";
import { faultAt, type Located, located, locatedList, locatedTexts } from "./located.ts";

/** In some shift, one crew that may do a piece of work has the people it takes: else the line stands for ever. */
export function enoughPeople(json: unknown): Fault[] {
  const uses = crewUses(json);
  const crews = locatedList(json, "crews");
  return [
    ...crews.flatMap((crew) => ofOneCrew(crew, uses)),
    ...uses.filter((use) => use.crews.length > 1).flatMap((use) => ofSeveral(use, crews)),
    ...crews.flatMap(allAbsent),
    ...crews.flatMap((crew) => missingPeople(json, crew)),
    ...crews.flatMap((crew) => rotation(json, crew, uses)),
  ];
}

function ofOneCrew({ at, value }: Located, uses: readonly CrewUse[]): Fault[] {
  const most = mostThere(value);
  const use = uses
    .filter(({ crews }) => crews.length === 1 && crews[0]?.text === value.name)
    .toSorted((a, b) => b.people - a.people)[0];
  if (most === null || use === undefined || most >= use.people) return [];
  const found = `'${value.name}' never has more than ${most}, but ${use.what} takes ${use.people}`;
  return [faultAt([...at, "people"], found, `${use.people} or more in at least one shift`, "add people")];
}

function ofSeveral({ at, crews, people, what }: CrewUse, all: readonly Located[]): Fault[] {
  const known = crews.map(({ text }) => all.find(({ value }) => value.name === text));
  const most = known.map((crew) => (crew === undefined ? null : mostThere(crew.value)));
  if (most.some((count) => count === null || count >= people)) return [];
  const found = `no crew ever has the people that ${what} takes`;
  return [faultAt(at, found, `a crew with ${people} or more in at least one shift`, "add people")];
}

function allAbsent({ at, value }: Located): Fault[] {
  if (value.absent === undefined || readShare(value.absent).value !== 1) return [];
  return [faultAt([...at, "absent"], "everybody is always absent", "less than 100 %", "lower it")];
}

/** There is another place to change to, and time to work between. */
function rotation(json: unknown, { at, value }: Located, uses: readonly CrewUse[]): Fault[] {
  const written = located(json, ...at, "rotation");
  if (written === null) return [];
  const places = uses.filter(
    ({ what, crews }) => what === "one position" && crews.some(({ text }) => text === value.name),
  );
  const every = readQuantity(time, written.value.every).value;
  const takes = readQuantity(time, written.value.takes).value;
  const isShort = every !== null && takes !== null && takes >= every;
  return [
    ...(places.length >= 2
      ? []
      : [
          faultAt(
            written.at,
            `'${value.name}' works at ${places.length === 0 ? "no place" : "one place"}`,
            "a crew with two places or more",
            "name the crew at another place too, or delete it",
          ),
        ]),
    ...(isShort
      ? [
          faultAt(
            [...written.at, "takes"],
            "changing takes as long as the work between",
            `less than ${written.value.every}`,
            "lower it",
          ),
        ]
      : []),
  ];
}

/** Who is ill, who steps in, and how many are there at least. */
function missingPeople(json: unknown, { at, value }: Located): Fault[] {
  const most = mostPeople(value.people);
  const cover = locatedTexts(json, ...at, "cover");
  const itself = cover.filter(({ text }) => text === value.name);
  const isMore = most !== null && typeof value.ill === "number" && value.ill > most;
  return [
    ...(isMore ? [faultAt([...at, "ill"], `${value.ill} ill of ${most} people`, `at most ${most}`, "lower it")] : []),
    ...itself.map((each) => faultAt(each.at, "the crew steps in for itself", "other crews", "delete it")),
    ...(value.atLeast !== undefined && cover.length === 0
      ? [faultAt([...at, "atLeast"], "nobody steps in", '"cover" with it', 'name crews under "cover", or delete it')]
      : []),
  ];
}

/** By plan, less those who are ill, unless somebody steps in for them. */
function mostThere({ people, ill, cover }: Located["value"]): number | null {
  const most = mostPeople(people);
  const isCovered = Array.isArray(cover) && cover.length > 0;
  return most === null || typeof ill !== "number" || isCovered ? most : Math.max(0, most - ill);
}

function mostPeople(people: unknown): number | null {
  if (typeof people === "number") return Number.isInteger(people) ? people : null;
  if (!isRecord(people)) return null;
  const numbers = Object.values(people).filter((count) => typeof count === "number");
  return numbers.length < Object.keys(people).length ? null : Math.max(0, ...numbers);
}
