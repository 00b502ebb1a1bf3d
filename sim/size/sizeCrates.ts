import { meanOf } from "../random/index.ts";
import type { Demand } from "./demand.ts";
import type { RequiredRate, SizedCrates, SizedStation } from "./design.ts";

/** Keeps a load of just the most allowed from asking for one more position. */
const ROUNDING = 1e-9;

/** Lorries of equal loads, one as soon as the one before is hung; places in lairage, and crates in circulation (Little 1961). */
export function sizeCrates({ crates }: Demand, rate: RequiredRate): SizedCrates {
  const { headsPerCrate } = crates;
  const needed = Math.ceil(rate.headsPerDay / headsPerCrate);
  const lorries = Math.ceil(needed / crates.perLorry);
  const cratesPerLorry = Math.ceil(needed / lorries);
  const perSecond = rate.headsPerSecond / headsPerCrate;
  const everySeconds = rate.hangingSeconds / lorries;
  const late = meanOf(crates.delay);
  const lairageCrates = Math.ceil(cratesPerLorry + perSecond * (crates.lead + late));
  const atPlant = crates.lead + late + everySeconds + meanOf(crates.washing) + meanOf(crates.restacking);
  const fleet = Math.min(lorries * cratesPerLorry, Math.ceil(perSecond * (atPlant + crates.away)) + cratesPerLorry);
  return {
    perDay: lorries * cratesPerLorry,
    perHour: perSecond * 3600,
    lorries,
    cratesPerLorry,
    everySeconds,
    lairageCrates,
    fleet,
  };
}

/** The steps on crates, and who does them. */
export const CRATE_STEPS = {
  unloading: "live animals",
  feeding: "live animals",
  washing: "crate return",
  restacking: "crate return",
} as const;

/** Positions of the crate steps, one person at each. */
export function sizeCrateSteps(demand: Demand, headsPerSecond: number): SizedStation[] {
  const perSecond = headsPerSecond / demand.crates.headsPerCrate;
  return Object.entries(CRATE_STEPS).map(([name, crew]) => {
    const cycleSeconds = meanOf(demand.crates[name as keyof typeof CRATE_STEPS]);
    const busy = perSecond * cycleSeconds;
    const positions = Math.max(1, Math.ceil(busy / demand.line.handLoad - ROUNDING));
    return {
      name,
      section: "live animals",
      work: "crates",
      cycleSeconds,
      positions,
      crew,
      peoplePerPosition: 1,
      load: busy / positions,
      places: null,
    };
  });
}
