import type { Plan } from "../../asked/plan/index.ts";
import { stageOf, steps } from "../../day/line/index.ts";
import { does } from "../../text/kinds/index.ts";

/** Names of the stages at which heads can be counted. */
export function countingStages(plan: Plan): string[] {
  return steps(plan)
    .filter((step) => !does(step, "handle crates"))
    .map(({ name }) => name);
}

/** The last place of work that every head passes (chilling is no work), or the last stage where there is none. */
export function usualCountingStage(plan: Plan): string {
  const places = steps(plan).filter((step) => !does(step, "handle crates") && !does(step, "carry stations"));
  const onLine = places.filter((step) => does(step, "stand on a chain") || stageOf(step)?.offLine === false);
  const work = onLine.filter((step) => does(step, "work"));
  return (work.at(-1) ?? onLine.at(-1)!).name;
}
