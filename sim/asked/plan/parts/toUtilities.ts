import type { Utilities } from "../plan.ts";
import { tidy } from "./tidy.ts";

const LITRES_PER_M3 = 1000;
const SECONDS_PER_HOUR = 3600;
const JOULES_PER_KILOWATT_HOUR = 3_600_000;
const WATTS_PER_KILOWATT = 1000;

/** As the file has them: cubic metres, cubic metres per second, joules, watts. */
export interface WrittenUtilities {
  water: { perHead: number; perHour: number };
  energyPerHead: number;
  power: number;
}

export function toUtilities({ water, energyPerHead, power }: WrittenUtilities): Utilities {
  return {
    waterPerHead: tidy(water.perHead * LITRES_PER_M3),
    waterPerHour: tidy(water.perHour * LITRES_PER_M3 * SECONDS_PER_HOUR),
    energyPerHead: tidy(energyPerHead / JOULES_PER_KILOWATT_HOUR),
    powerKilowatts: tidy(power / WATTS_PER_KILOWATT),
  };
}
