import type { Plan } from "../../asked/plan/index.ts";
import { steps } from "../../day/line/index.ts";

/** Names of the stages at which heads can be counted. */
export function countingStages(plan: Plan): string[] {
  return steps(plan)
    .filter(({ kind }) => kind !== "crates")
    .map(({ name }) => name);
}

/** The last place of work that every head passes (chilling is no work), or the last stage where there is none. */
export function usualCountingStage(plan: Plan): string {
  const onLine = steps(plan).filter(
    (step) => step.kind === "chain station" || ((step.kind === "station" || step.kind === "dwell") && !step.of.offLine),
  );
  const work = onLine.filter(({ kind }) => kind !== "dwell");
  return (work.at(-1) ?? onLine.at(-1)!).name;
}
