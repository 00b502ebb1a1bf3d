import type { Plan } from "../plan/plan.ts";
import type { CompiledSupply } from "./compiledLine.ts";
import { FEEDING, type Step, UNLOADING } from "./steps.ts";

export function compileSupply(plan: Plan, all: Step[]): CompiledSupply {
  const { supply } = plan;
  if (supply.kind === "saturated") return { kind: "saturated", heads: supply.heads };
  if (supply.kind === "stream") {
    const { interarrival, heads, whenFull } = supply;
    return { kind: "stream", interarrival, heads, turnAway: whenFull === "turn away" };
  }
  const names = all.map((step) => step.name);
  return {
    kind: "loads",
    loads: supply.loads.map((load) => ({
      name: load.name,
      seconds: load.atSeconds,
      delay: load.delay,
      crates: load.crates,
      headsPerCrate: load.headsPerCrate,
      deadOnArrivalShare: load.deadOnArrivalShare,
    })),
    cratesAtHanging: plan.liveHandling!.cratesAtHanging,
    unloading: names.indexOf(UNLOADING),
    feeding: names.indexOf(FEEDING),
  };
}
