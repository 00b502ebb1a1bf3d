import { power } from "../../../maths/numeric/index.ts";
import type { Consumer, PlantUtilities } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";
import { tidy } from "./tidy.ts";

type File = NonNullable<PlanFile["utilities"]>;

const LITRES_PER_M3 = 1000;
const SECONDS_PER_HOUR = 3600;
const WATTS_PER_KILOWATT = 1000;
const JOULES_PER_KILOWATT_HOUR = 3_600_000;
const ATMOSPHERE = 101_325;
/** Specific heats of air, the one by the other. */
const KAPPA = 1.4;

/** `cleaning`: its sections' water is that of consumers of their own. */
export function toPlantUtilities(
  { coldWater, heating, compressor, wasteWater, consumers }: File,
  cleaning: PlanFile["day"]["cleaning"],
): PlantUtilities {
  return {
    coldCelsius: coldWater,
    fuelPerHeat: tidy((1 - heating.recovered) / heating.efficiency),
    kilowattHoursPerAir: tidy(idealAirWork(compressor.ratio) / compressor.efficiency),
    codPerLitre: wasteWater.cod === null ? null : tidy(wasteWater.cod / LITRES_PER_M3),
    codRemovedShare: wasteWater.removed,
    consumers: [...consumers.map(toConsumer), ...(cleaning?.sections ?? []).flatMap(cleaningWater)],
  };
}

/**
 * Electricity in kWh for a cubic metre of free air at one atmosphere, compressed in one stage without losses and without cooling: k/(k-1) p (r^((k-1)/k)
 * - 1), as in any textbook. Real compressors take about 0.10 to 0.12 kWh at 7 to 8 (common practice, no source).
 *
 * @example idealAirWork(8) // 0.0799
 */
export function idealAirWork(ratio: number): number {
  const exponent = (KAPPA - 1) / KAPPA;
  return ((ATMOSPHERE / exponent) * (power(ratio, exponent) - 1)) / JOULES_PER_KILOWATT_HOUR;
}

function cleaningWater({ section, water }: NonNullable<PlanFile["day"]["cleaning"]>["sections"][number]): Consumer[] {
  if (water === null) return [];
  return [
    {
      ...{ name: `cleaning of ${section}`, during: "cleaning", waterPerHead: 0, waterPerHour: 0 },
      ...{ waterPerDay: tidy(water * LITRES_PER_M3), celsius: null, airPerHour: 0, powerKilowatts: 0 },
    },
  ];
}

function toConsumer({ name, during, water, air, power: watts }: File["consumers"][number]): Consumer {
  return {
    name,
    during,
    waterPerHead: tidy(water.perHead * LITRES_PER_M3),
    waterPerHour: tidy(water.perHour * LITRES_PER_M3 * SECONDS_PER_HOUR),
    waterPerDay: tidy(water.perDay * LITRES_PER_M3),
    celsius: water.at ?? null,
    airPerHour: tidy(air * SECONDS_PER_HOUR),
    powerKilowatts: tidy(watts / WATTS_PER_KILOWATT),
  };
}
