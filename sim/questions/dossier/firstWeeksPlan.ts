import { does } from "../../text/kinds/index.ts";
import type { SizedKind } from "./kinds.ts";
import type { RampWeek } from "./people.ts";

/** Days that `gambrel week` takes at most. */
const MAX_DAYS = 56;

/** The plan of a kind with everybody still learning, day after day until the rated speed: for `gambrel week`. */
export function firstWeeksPlan(
  { demand, design, plan }: SizedKind,
  ramp: readonly RampWeek[],
): Record<string, unknown> {
  const { staff, week } = demand;
  const learning = { rate: `${100 * staff.learning} %`, known: staff.known, done: staff.done };
  const worked = plan.line.map((stage) => does(stage, "work") && stage.crews.length > 0);
  const line = (design.plan.line as Record<string, unknown>[]).map((stage, at) =>
    worked[at] ? { ...stage, learning } : stage,
  );
  const days = Math.min(ramp.length * week.days, MAX_DAYS);
  return {
    ...design.plan,
    name: `${demand.name}, first weeks`,
    line,
    week: { days: Array.from({ length: days }, (_, day) => ({ name: nameOf(day, week.days) })) },
  };
}

function nameOf(day: number, perWeek: number): string {
  return `week ${Math.floor(day / perWeek) + 1} day ${(day % perWeek) + 1}`;
}
