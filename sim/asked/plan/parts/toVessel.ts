import type { Vessel } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

export function toVessel(file: PlanFile["vessels"][number]): Vessel {
  return {
    name: file.name,
    capacityKg: file.capacity,
    emptyAtKg: file.emptyAt ?? file.capacity,
    emptyingSeconds: file.emptying,
    crew: file.crew,
    whenFull: file.whenFull,
  };
}
