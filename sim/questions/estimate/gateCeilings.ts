import type { Plan } from "../../asked/plan/index.ts";
import type { Ceiling } from "./ceiling.ts";
import { stretchSeconds } from "./stretchSeconds.ts";

/** At most so many heads between two points, over the least time that a head takes from one to the other (Little 1961). */
export function gateCeilings(plan: Plan): Ceiling[] {
  return plan.gates.map(({ name, from, to, atMost }) => {
    const whole = to.stage === null || to.moment === "end" || to.moment === "exit";
    return { what: name, kind: "gate", headsPerSecond: atMost / stretchSeconds(plan, from, to.stage, whole) };
  });
}
