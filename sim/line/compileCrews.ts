import { CREW_RULES, type Plan } from "../plan/plan.ts";
import type { CrewColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, workplace } from "./steps.ts";

export function compileCrews(plan: Plan, all: Step[]): CrewColumns {
  const served = plan.crews.map((crew) =>
    all.flatMap((step, stage) => (workplace(step).crew === crew.name ? [stage] : [])),
  );
  return {
    count: plan.crews.length,
    names: plan.crews.map((crew) => crew.name),
    rule: Int8Array.from(plan.crews, (crew) => CREW_RULES.indexOf(crew.rule)),
    peopleMax: Int32Array.from(plan.crews, (crew) => Math.max(...crew.people)),
    stationFrom: rowRanges(served.map((list) => list.length)),
    stations: Int32Array.from(served.flat()),
  };
}
