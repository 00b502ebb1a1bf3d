import { meanOf } from "../../maths/random/index.ts";
import type { Demand } from "./demand.ts";
import type { RequiredRate, SizedByProduct } from "./design.ts";
import { stepShares } from "./stepShares.ts";

/** Kilograms of each by-product, and vessels so many that one is emptied while the others take what comes. */
export function sizeByProducts(demand: Demand, rate: RequiredRate): SizedByProduct[] {
  const shares = stepShares(demand);
  const liveKg = meanOf(demand.animals.liveWeight);
  const kgPerHead = new Map<string, number>();
  for (const { name: step, figures } of demand.steps) {
    for (const { name, share } of figures.takesOff ?? []) {
      kgPerHead.set(name, (kgPerHead.get(name) ?? 0) + share * liveKg * shares.get(step)!);
    }
  }
  const { vessel, emptying } = demand.byProducts;
  return [...kgPerHead].map(([name, kg]) => {
    const kgPerSecond = kg * rate.designHeadsPerSecond;
    return {
      name,
      kgPerHead: kg,
      kgPerDay: kg * rate.headsPerDay,
      kgPerHour: kg * rate.headsPerSecond * 3600,
      vessels: Math.ceil((kgPerSecond * emptying) / vessel),
      emptyingsPerDay: Math.ceil((kg * rate.headsPerDay) / vessel),
    };
  });
}
