import type { Plan, Point } from "../../asked/plan/plan.ts";
import type { CompiledStunned } from "./compiledLine.ts";
import type { Step } from "./steps.ts";

/** The care for stunned heads, with the limits that a second stun begins anew. */
export function compileStunned(plan: Plan, all: Step[]): CompiledStunned | null {
  if (plan.stunned === null) return null;
  const { from, to, hold, late } = plan.stunned;
  const names = all.map((step) => step.name);
  const limits = plan.limits.flatMap((limit, index) =>
    isWorkAt(limit.from, from) && isWorkAt(limit.to, to) ? [index] : [],
  );
  return {
    from: names.lastIndexOf(from),
    to: names.lastIndexOf(to),
    hold,
    limits: Int32Array.from(limits),
    late: late && {
      afterSeconds: late.afterSeconds,
      takesSeconds: late.takesSeconds,
      sticks: late.help === "stick there",
      crew: plan.crews.findIndex(({ name }) => name === late.crew),
    },
  };
}

function isWorkAt({ stage, moment }: Point, name: string): boolean {
  return stage === name && (moment === "start" || moment === "end");
}
