import type { Plan } from "../../asked/plan/index.ts";
import { meanOf, timesAsLong, type Varying } from "../../maths/random/index.ts";

/**
 * The plan with every walk of a pooled post counted as work at the step it leads to, once for each head, or cycle of crates: what the
 * estimate, which knows no walking, is made from. The posts are sized by the same rule.
 */
export function withWalking(plan: Plan): Plan {
  const walks = new Map(plan.crews.map(({ name, walkSeconds }) => [name, walkSeconds]));
  const longer = (cycle: Varying, crews: readonly string[]): Varying => {
    const walk = Math.max(0, ...crews.map((crew) => walks.get(crew) ?? 0));
    return walk === 0 ? cycle : timesAsLong(cycle, 1 + walk / meanOf(cycle));
  };
  const { liveHandling } = plan;
  const crateSteps = <Step extends { secondsPerCycle: Varying; crews: string[] }>(steps: Step[]): Step[] =>
    steps.map((step) => ({ ...step, secondsPerCycle: longer(step.secondsPerCycle, step.crews) }));
  return {
    ...plan,
    line: plan.line.map((stage) =>
      stage.kind === "station" ? { ...stage, cycleSeconds: longer(stage.cycleSeconds, stage.crews) } : stage,
    ),
    liveHandling:
      liveHandling === null
        ? null
        : { ...liveHandling, toHanging: crateSteps(liveHandling.toHanging), back: crateSteps(liveHandling.back) },
  };
}
