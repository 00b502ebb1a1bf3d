import type { Plan } from "../../asked/plan/index.ts";
import { meanOf, squaredCvOf, type Varying } from "../../maths/random/index.ts";

/** Kilograms. */
export interface LiveWeight {
  meanKg: number;
  /** Between heads of one load. */
  sdKg: number;
}

/** Live weight of the plan's heads, averaged over its loads. */
export function liveWeight({ supply }: Plan): LiveWeight {
  if (supply.kind !== "loads") return of(supply.liveWeightKg);
  let [heads, mass, spread] = [0, 0, 0];
  for (const { crates, headsPerCrate, comesShare, liveWeightKg } of supply.loads) {
    const { meanKg, sdKg } = of(liveWeightKg);
    const expected = crates * headsPerCrate * comesShare;
    heads += expected;
    mass += expected * meanKg;
    spread += expected * sdKg;
  }
  return { meanKg: mass / heads, sdKg: spread / heads };
}

function of(weightKg: Varying): LiveWeight {
  const meanKg = meanOf(weightKg);
  return { meanKg, sdKg: meanKg * Math.sqrt(squaredCvOf(weightKg)) };
}
