import type { Plan } from "../../asked/plan/plan.ts";
import type { VesselColumns } from "./compiledLine.ts";
import { rowRanges } from "./rowRanges.ts";
import { byProductsOf, type Step } from "./steps.ts";

/** Vessels; their slots are filled in by `compileSlots`. */
export function compileVessels(plan: Plan, all: Step[]): VesselColumns {
  const crews = plan.crews.map((crew) => crew.name);
  const feeders = plan.vessels.map((vessel) =>
    all.flatMap((step, stage) => (byProductsOf(step).some((product) => product.vessel === vessel.name) ? [stage] : [])),
  );
  return {
    count: plan.vessels.length,
    names: plan.vessels.map((vessel) => vessel.name),
    capacityKg: Float64Array.from(plan.vessels, (vessel) => vessel.capacityKg),
    emptyAtKg: Float64Array.from(plan.vessels, (vessel) => vessel.emptyAtKg),
    emptyingSeconds: Float64Array.from(plan.vessels, (vessel) => vessel.emptyingSeconds),
    crew: Int32Array.from(plan.vessels, (vessel) => crews.indexOf(vessel.crew ?? "")),
    stops: Int8Array.from(plan.vessels, (vessel) => (vessel.whenFull === "stop" ? 1 : 0)),
    slot: new Int32Array(plan.vessels.length).fill(-1),
    feederFrom: rowRanges(feeders.map((list) => list.length)),
    feeder: Int32Array.from(feeders.flat()),
  };
}
