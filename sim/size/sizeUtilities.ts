import type { Demand } from "./demand.ts";
import type { RequiredRate, SizedCrates, SizedStation, SizedUtilities } from "./design.ts";
import { stepShares } from "./stepShares.ts";

const LITRES = 1000;

/** Water and power of the steps and of crate washing, over the day's shifts. The chiller's own figure is its power. */
export function sizeUtilities(
  demand: Demand,
  rate: RequiredRate,
  crates: SizedCrates,
  stations: readonly SizedStation[],
): SizedUtilities {
  const shares = stepShares(demand);
  const openSeconds = demand.day.shifts.reduce((sum, { from, to }) => sum + to - from, 0);
  let cubicMetres = crates.perDay * demand.crates.waterPerCrate;
  let kilowatts = 0;
  for (const { name, figures } of demand.steps) {
    const { waterPerHead = 0, waterPerHour = 0, power = 0 } = figures;
    const machines = stations.find((station) => station.name === name)?.positions ?? 1;
    cubicMetres += waterPerHead * rate.headsPerDay * shares.get(name)! + waterPerHour * openSeconds;
    kilowatts += (power / 1000) * machines;
  }
  const litresPerDay = cubicMetres * LITRES;
  return {
    litresPerDay,
    litresPerHead: litresPerDay / rate.headsPerDay,
    kilowatts,
    kilowattHoursPerDay: (kilowatts * openSeconds) / 3600,
  };
}
