import type { DayState } from "../state/dayState.ts";
import type { StageState } from "../state/stageState.ts";

/** The gates before the stage let so many heads more in. */
export function hasGateFor(day: DayState, { gates }: StageState, heads: number): boolean {
  return gates.every((gate) => day.between[gate]!.heads + heads <= day.gates.atMost[gate]!);
}

/** The vessels that stop the stage when they are full are not full before the last of so many heads, of mean weight, is begun. */
export function hasVesselFor(day: DayState, stage: StageState, heads: number): boolean {
  const { productVessel, productShare } = day.stages;
  for (let row = stage.productFrom; row < stage.productTo; row++) {
    const vessel = productVessel[row]!;
    if (vessel < 0 || !day.vessels.stops[vessel]) continue;
    const perHead = productShare[row]! * meanLiveKg(day);
    if (day.vesselKg[vessel]! + (heads - 1) * perHead >= day.vessels.capacityKg[vessel]!) return false;
  }
  return true;
}

function meanLiveKg({ liveKg, hung }: DayState): number {
  return hung > 0 ? liveKg / hung : 0;
}
