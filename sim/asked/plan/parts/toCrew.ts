import type { Crew } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

/** A pool of people, counted by shift. */
export function toCrew(file: PlanFile["crews"][number], shifts: PlanFile["day"]["shifts"]): Crew {
  const { people } = file;
  return {
    name: file.name,
    people: shifts.map((shift) => (typeof people === "number" ? people : (people[shift.name] ?? 0))),
    rule: file.rule,
    walkSeconds: file.walking,
    absentShare: file.absent,
    payPerSecond: file.pay?.amountPerSecond ?? null,
  };
}
