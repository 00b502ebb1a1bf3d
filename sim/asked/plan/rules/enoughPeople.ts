import { readShare } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { isRecord } from "../isRecord.ts";
import { type CrewUse, crewUses } from "./crewUses.ts";
import { faultAt, type Located, locatedList } from "./located.ts";

/** In some shift, one crew that may do a piece of work has the people it takes: else the line stands for ever. */
export function enoughPeople(json: unknown): Fault[] {
  const uses = crewUses(json);
  const crews = locatedList(json, "crews");
  return [
    ...crews.flatMap((crew) => ofOneCrew(crew, uses)),
    ...uses.filter((use) => use.crews.length > 1).flatMap((use) => ofSeveral(use, crews)),
    ...crews.flatMap(allAbsent),
  ];
}

function ofOneCrew({ at, value }: Located, uses: readonly CrewUse[]): Fault[] {
  const most = mostPeople(value.people);
  const use = uses
    .filter(({ crews }) => crews.length === 1 && crews[0]?.text === value.name)
    .toSorted((a, b) => b.people - a.people)[0];
  if (most === null || use === undefined || most >= use.people) return [];
  const found = `'${value.name}' never has more than ${most}, but ${use.what} takes ${use.people}`;
  return [faultAt([...at, "people"], found, `${use.people} or more in at least one shift`, "add people")];
}

function ofSeveral({ at, crews, people, what }: CrewUse, all: readonly Located[]): Fault[] {
  const known = crews.map(({ text }) => all.find(({ value }) => value.name === text));
  const most = known.map((crew) => (crew === undefined ? null : mostPeople(crew.value.people)));
  if (most.some((count) => count === null || count >= people)) return [];
  const found = `no crew ever has the people that ${what} takes`;
  return [faultAt(at, found, `a crew with ${people} or more in at least one shift`, "add people")];
}

function allAbsent({ at, value }: Located): Fault[] {
  if (value.absent === undefined || readShare(value.absent).value !== 1) return [];
  return [faultAt([...at, "absent"], "everybody is always absent", "less than 100 %", "lower it")];
}

function mostPeople(people: unknown): number | null {
  if (typeof people === "number") return Number.isInteger(people) ? people : null;
  if (!isRecord(people)) return null;
  const numbers = Object.values(people).filter((count) => typeof count === "number");
  return numbers.length < Object.keys(people).length ? null : Math.max(0, ...numbers);
}
