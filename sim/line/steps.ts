import type { CrateStep, Plan, Stage } from "../plan/plan.ts";

/** A stage of the compiled line before it is flattened: a crate step or a stage of the plan's line. */
export type Step = { name: string; crates: CrateStep; stage: null } | { name: string; crates: null; stage: Stage };

export const UNLOADING = "unloading";
export const FEEDING = "crate feeding";

/** All stages in the order in which things pass them. */
export function steps(plan: Plan): Step[] {
  const line: Step[] = plan.line.map((stage) => ({ name: stage.name, crates: null, stage }));
  if (plan.liveHandling === null) return line;
  return [
    { name: UNLOADING, crates: plan.liveHandling.unloading, stage: null },
    { name: FEEDING, crates: plan.liveHandling.feeding, stage: null },
    ...line,
  ];
}

/** What a step has in common with every other: places to work at, people, things that break. */
export function workplace(step: Step): Pick<CrateStep, "positions" | "crew" | "peoplePerPosition" | "breakdowns"> {
  if (step.crates !== null) return step.crates;
  if (step.stage.kind === "station") return step.stage;
  return { positions: 1, crew: null, peoplePerPosition: 0, breakdowns: [] };
}
