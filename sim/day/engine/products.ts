import type { DayState } from "./state/dayState.ts";
import type { Item } from "./state/item.ts";
import type { StageState } from "./state/stageState.ts";
import { fillVessel } from "./vessels.ts";

/** Takes off the head what the stage takes off. */
export function takeProducts(day: DayState, stage: StageState, item: Item): void {
  if (stage.productFrom === stage.productTo) return;
  const { productName, productShare, productOfLive, productVessel } = day.stages;
  for (let row = stage.productFrom; row < stage.productTo; row++) {
    const base = productOfLive[row] ? item.weight : item.mass;
    const kilograms = Math.min(item.mass, productShare[row]! * base);
    item.mass -= kilograms;
    day.productKg[productName[row]!]! += kilograms;
    if (productVessel[row]! >= 0) fillVessel(day, day.vesselAt[productVessel[row]!]!, kilograms);
  }
}
