import { type Fault, formatPath, isRecord, listWords, nearestWords } from "../../asked/plan/index.ts";

/** New numbers of people in crews: path in the plan -> new value; or what is wrong with the change. */
export interface CrewChange {
  set: Record<string, unknown>;
  faults: Fault[];
}

/** Adds people to crews of today's plan (its JSON), or takes some away: to one number, or in every shift that has any. */
export function crewChange(
  crew: Readonly<Record<string, number>>,
  base: unknown,
  at: readonly (string | number)[],
  set: Readonly<Record<string, unknown>>,
): CrewChange {
  const crews = isRecord(base) && Array.isArray(base.crews) ? base.crews.filter(isRecord) : [];
  const names = crews.flatMap(({ name }) => (typeof name === "string" ? [name] : []));
  const change: CrewChange = { set: {}, faults: [] };
  for (const [name, more] of Object.entries(crew)) {
    const path = `crews[${JSON.stringify(name)}].people`;
    const fault = (found: string, allowed: string, remedy: string): void => {
      change.faults.push({ path: formatPath([...at, "crew", name]), found, allowed, remedy });
    };
    const people = added(crews.find((each) => each.name === name)?.people, more);
    if (!names.includes(name))
      fault(`'${name}' is no crew of the plan`, listWords(names), nearestWords(name, names, "name one of these"));
    else if ([path, `crews.${name}.people`].some((key) => Object.hasOwn(set, key)))
      fault("its people are set as well", "", "keep one of the two");
    else if (people === null)
      fault(`${more} leaves fewer than nobody`, "no fewer than the crew has", "take away fewer");
    else change.set[path] = people;
  }
  return change;
}

/** Null when somebody would be missing. */
function added(people: unknown, more: number): unknown {
  if (typeof people === "number") return people + more >= 0 ? people + more : null;
  if (!isRecord(people)) return people;
  const shifts = Object.entries(people).map(
    ([shift, count]) => [shift, typeof count === "number" && count > 0 ? count + more : count] as const,
  );
  return shifts.some(([, count]) => typeof count === "number" && count < 0) ? null : Object.fromEntries(shifts);
}
