import type { Plan } from "../../asked/plan/plan.ts";
import { type CompiledSupply, NO_LIMIT } from "./compiledLine.ts";
import type { Step } from "./steps.ts";

export function compileSupply(plan: Plan, all: Step[]): CompiledSupply {
  const { supply } = plan;
  if (supply.kind === "saturated") return { kind: "saturated", heads: supply.heads, liveWeightKg: supply.liveWeightKg };
  if (supply.kind === "stream") {
    const { interarrival, heads, whenFull, liveWeightKg } = supply;
    return { kind: "stream", interarrival, heads, turnAway: whenFull === "turn away", liveWeightKg };
  }
  const handling = plan.liveHandling!;
  return {
    kind: "loads",
    loads: supply.loads.map((load) => ({
      name: load.name,
      seconds: load.atSeconds,
      delay: load.delay,
      comesShare: load.comesShare,
      crates: load.crates,
      headsPerCrate: load.headsPerCrate,
      deadOnArrivalShare: load.deadOnArrivalShare,
      liveWeightKg: load.liveWeightKg,
    })),
    cratesAtHanging: handling.cratesAtHanging,
    unloading: 0,
    feeding: handling.toHanging.length - 1,
    firstBack: all.findIndex((step) => step.kind === "crates" && step.isBack),
    fleet: handling.fleet?.crates ?? NO_LIMIT,
    awaySeconds: handling.fleet?.awaySeconds ?? 0,
  };
}
