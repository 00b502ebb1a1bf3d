import type { Fault } from "../fault.ts";
import { isRecord } from "../isRecord.ts";
import { crewUses } from "./crewUses.ts";
import { faultAt, locatedList } from "./located.ts";

/** In some shift, every crew that is put to work has the people that one position takes: else the line stands for ever. */
export function enoughPeople(json: unknown): Fault[] {
  const uses = crewUses(json);
  return locatedList(json, "crews").flatMap(({ at, value }) => {
    const most = mostPeople(value.people);
    const use = uses
      .filter(({ crew }) => crew === value.name)
      .toSorted((a, b) => b.peoplePerPosition - a.peoplePerPosition)[0];
    if (most === null || use === undefined || most >= use.peoplePerPosition) return [];
    const found = `'${value.name}' never has more than ${most}, but one position takes ${use.peoplePerPosition}`;
    return [faultAt([...at, "people"], found, `${use.peoplePerPosition} or more in at least one shift`, "add people")];
  });
}

function mostPeople(people: unknown): number | null {
  if (typeof people === "number") return Number.isInteger(people) ? people : null;
  if (!isRecord(people)) return null;
  const numbers = Object.values(people).filter((count) => typeof count === "number");
  return numbers.length < Object.keys(people).length ? null : Math.max(0, ...numbers);
}
