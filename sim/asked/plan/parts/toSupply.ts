import type { Load, Supply } from "../plan.ts";
import { expandedLoadNames } from "../rules/expandedLoadNames.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FileSupply = PlanFile["supply"];
type FileLoad = NonNullable<FileSupply["loads"]>[number];

/** Where heads come from, repeated loads written out. */
export function toSupply({ loads, stream, saturated }: FileSupply, start: number): Supply {
  if (loads !== undefined) return { kind: "loads", loads: loads.flatMap((load) => toLoads(load, start)) };
  if (stream !== undefined) {
    const { liveWeight, ...rest } = stream;
    return { kind: "stream", ...rest, liveWeightKg: liveWeight };
  }
  const { heads, liveWeight } = saturated as NonNullable<typeof saturated>;
  return { kind: "saturated", heads, liveWeightKg: liveWeight };
}

function toLoads(load: FileLoad, start: number): Load[] {
  return expandedLoadNames(load).map((name, index) => ({
    name,
    atSeconds: load.at - start + index * (load.repeat?.every ?? 0),
    delay: load.delay,
    comesShare: load.comes,
    crates: load.crates,
    headsPerCrate: load.headsPerCrate,
    deadOnArrivalShare: load.deadOnArrival,
    liveWeightKg: load.liveWeight,
  }));
}
