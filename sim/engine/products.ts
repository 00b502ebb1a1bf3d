import type { DayState } from "./dayState.ts";
import type { StageState } from "./stageState.ts";
import { fillVessel } from "./vessels.ts";

/** Takes off the head what the stage takes off. */
export function takeProducts(day: DayState, stage: StageState, item: number): void {
  const { productName, productShare, productOfLive, productVessel } = day.stages;
  for (let row = stage.productFrom; row < stage.productTo; row++) {
    const base = productOfLive[row] ? day.pool.weight[item]! : day.pool.mass[item]!;
    const kilograms = Math.min(day.pool.mass[item]!, productShare[row]! * base);
    day.pool.mass[item]! -= kilograms;
    day.productKg[productName[row]!]! += kilograms;
    if (productVessel[row]! >= 0) fillVessel(day, productVessel[row]!, kilograms);
  }
}
