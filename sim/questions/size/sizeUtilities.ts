import type { Demand, HandlingStep } from "./demand.ts";
import type { RequiredRate, SizedChiller, SizedCrates, SizedStation, SizedUtilities } from "./design.ts";
import { stepShares } from "./stepShares.ts";

const LITRES = 1000;

/**
 * Fresh water and power of the steps and of the crate steps, over the day's shifts; `stations` are of both. The chiller's electricity follows from
 * its heat, unless its power is given.
 */
export function sizeUtilities(
  demand: Demand,
  rate: RequiredRate,
  crates: SizedCrates,
  {
    stations,
    handling,
    chiller,
  }: { stations: readonly SizedStation[]; handling: readonly HandlingStep[]; chiller: SizedChiller | null },
): SizedUtilities {
  const shares = stepShares(demand);
  const openSeconds = demand.day.shifts.reduce((sum, { from, to }) => sum + to - from, 0);
  const positionsOf = (name: string): number => stations.find((station) => station.name === name)?.positions ?? 1;
  let [cubicMetres, kilowatts] = [0, 0];
  for (const { name, figures } of handling) {
    const { waterPerCrate = 0, waterReused = 0, power = 0 } = figures;
    cubicMetres += crates.perDay * waterPerCrate * (1 - waterReused);
    kilowatts += (power / 1000) * positionsOf(name);
  }
  for (const { name, figures } of demand.steps) {
    const { waterPerHead = 0, waterPerHour = 0 } = figures;
    const power = figures.power ?? (name === chiller?.name ? chiller.electricKilowatts * 1000 : 0);
    cubicMetres += waterPerHead * rate.headsPerDay * shares.get(name)! + waterPerHour * openSeconds;
    kilowatts += (power / 1000) * positionsOf(name);
  }
  const litresPerDay = cubicMetres * LITRES;
  return {
    litresPerDay,
    litresPerHead: litresPerDay / rate.headsPerDay,
    kilowatts,
    kilowattHoursPerDay: (kilowatts * openSeconds) / 3600,
  };
}
