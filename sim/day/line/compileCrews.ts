import { CREW_RULES, type Plan } from "../../asked/plan/plan.ts";
import type { CrewColumns } from "./compiledLine.ts";
import { protectedStages } from "./protectedStages.ts";
import { rowRanges } from "./rowRanges.ts";
import { type Step, workplace } from "./steps.ts";

export function compileCrews(plan: Plan, all: Step[]): CrewColumns {
  const served = plan.crews.map((crew) =>
    all.flatMap((step, stage) => (workplace(step).crews.includes(crew.name) ? [stage] : [])),
  );
  const stretch = protectedStages(plan, all);
  return {
    count: plan.crews.length,
    names: plan.crews.map((crew) => crew.name),
    rule: Int8Array.from(plan.crews, (crew) => CREW_RULES.indexOf(crew.rule)),
    peopleMax: Int32Array.from(plan.crews, (crew) => Math.max(...crew.people)),
    shiftPeople: plan.crews.map((crew) => crew.people),
    walkSeconds: Float64Array.from(plan.crews, (crew) => crew.walkSeconds),
    absentShare: Float64Array.from(plan.crews, (crew) => crew.absentShare),
    protected: Int8Array.from(served, (list) => (list.some((stage) => stretch[stage]) ? 1 : 0)),
    stationFrom: rowRanges(served.map((list) => list.length)),
    stations: Int32Array.from(served.flat()),
  };
}
