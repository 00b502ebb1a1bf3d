import { meanOf } from "../../maths/random/index.ts";
import type { Demand, HandlingStep } from "./demand.ts";
import type { RequiredRate, SizedCrates, SizedStation } from "./design.ts";
import { maintenanceShare, repairShare } from "./repairs.ts";
import { CRATE_CREWS } from "./usualHandling.ts";

/** Keeps a load of just the most allowed from asking for one more position. */
const ROUNDING = 1e-9;

/** Behind the hanging point, until the crates are back on a lorry. */
const BACK = ["washing", "restacking", "palletsOut"];

/** Lorries of equal loads, one as soon as the one before is hung; places in lairage, and crates in circulation (Little 1961). */
export function sizeCrates({ crates }: Demand, rate: RequiredRate, handling: readonly HandlingStep[]): SizedCrates {
  const { headsPerCrate } = crates;
  const needed = Math.ceil(rate.headsPerDay / headsPerCrate);
  const lorries = Math.ceil(needed / crates.perLorry);
  const cratesPerLorry = Math.ceil(needed / lorries);
  const perSecond = rate.headsPerSecond / headsPerCrate;
  const everySeconds = rate.hangingSeconds / lorries;
  const lateSeconds = meanOf(crates.delay);
  const lairageCrates = Math.ceil(cratesPerLorry + perSecond * (crates.lead + lateSeconds));
  const backSeconds = handling
    .filter(({ name }) => BACK.includes(name))
    .reduce((sum, { figures }) => sum + meanOf(figures.time), 0);
  const atPlant = crates.lead + lateSeconds + everySeconds + backSeconds;
  const fleet = Math.min(lorries * cratesPerLorry, Math.ceil(perSecond * (atPlant + crates.away)) + cratesPerLorry);
  return {
    perDay: lorries * cratesPerLorry,
    heads: lorries * cratesPerLorry * headsPerCrate,
    perHour: perSecond * 3600,
    lorries,
    cratesPerLorry,
    everySeconds,
    leadSeconds: crates.lead,
    lateSeconds,
    backSeconds,
    awaySeconds: crates.away,
    lairageCrates,
    fleet,
  };
}

/** Positions of the crate steps, machines and people at them. */
export function sizeCrateSteps(
  { crates, line }: Demand,
  headsPerSecond: number,
  handling: readonly HandlingStep[],
): SizedStation[] {
  return handling.map(({ name, figures }) => {
    const { cratesAtOnce, people, breakdowns } = figures;
    const cycleSeconds = meanOf(figures.time);
    const visitsPerHead = 1 / (crates.headsPerCrate * cratesAtOnce);
    const work = headsPerSecond * visitsPerHead * cycleSeconds;
    const busy = work * (1 + repairShare(breakdowns));
    const most = people === 0 ? line.machineLoad : line.handLoad;
    const positions = Math.max(1, Math.ceil(busy / most - ROUNDING));
    return {
      name,
      section: "live animals",
      work: "crates",
      cycleSeconds,
      cratesAtOnce,
      repairShare: repairShare(breakdowns),
      heldSeconds: 0,
      covers: null,
      positions,
      crew: people === 0 ? null : CRATE_CREWS[name]!,
      peoplePerPosition: people,
      headsPerSecondAtMost: (positions * headsPerSecond) / busy,
      visitsPerHead,
      personSecondsPerHead: visitsPerHead * cycleSeconds * people,
      repairLoad: work * maintenanceShare(breakdowns),
      load: busy / positions,
      places: null,
    };
  });
}
