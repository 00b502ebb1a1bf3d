import type { Consumer, Plan, PlantUtilities } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { per } from "./row.ts";
import { cleaningSeconds, workingSeconds } from "./workingTime.ts";

const HOURS_OF_DAY = 24;
const SECONDS_PER_HOUR = 3600;
/** Of water, kWh/(kg K); 1,000 L from 10 to 82 degC take 83.7 kWh. A litre is taken for a kilogram: within 3 % when hot. */
const HEAT_OF_WATER = 4.186 / SECONDS_PER_HOUR;

/** What one consumer of the plant used on one day, and the most at once while it ran. */
export interface ServiceUse {
  name: string;
  during: Consumer["during"];
  litres: number;
  /** Of the water; null for cold water. */
  celsius: number | null;
  /** Heat in its water. */
  heatKilowattHours: number;
  airCubicMetres: number;
  /** Of its motors, and of the compressor for its air. */
  electricKilowattHours: number;
  litresPerHour: number;
  heatKilowatts: number;
  electricKilowatts: number;
}

/** Everything beside the stages, consumer by consumer; nothing for a plan that names none. */
export function serviceUses(day: DayRecord, plan: Plan): ServiceUse[] {
  const { utilities } = plan;
  return utilities === null ? [] : utilities.consumers.map((consumer) => useOf(consumer, utilities, day, plan));
}

function useOf(consumer: Consumer, utilities: PlantUtilities, day: DayRecord, plan: Plan): ServiceUse {
  const hours = hoursOf(consumer, day, plan);
  const litres = consumer.waterPerHead * day.heads.hung + consumer.waterPerHour * hours + consumer.waterPerDay;
  const rise = consumer.celsius === null ? 0 : consumer.celsius - utilities.coldCelsius;
  const electricKilowatts = consumer.powerKilowatts + consumer.airPerHour * utilities.kilowattHoursPerAir;
  const litresPerHour = per(litres, hours) ?? 0;
  return {
    name: consumer.name,
    during: consumer.during,
    litres,
    celsius: consumer.celsius,
    heatKilowattHours: litres * rise * HEAT_OF_WATER,
    airCubicMetres: consumer.airPerHour * hours,
    electricKilowattHours: electricKilowatts * hours,
    litresPerHour,
    heatKilowatts: litresPerHour * rise * HEAT_OF_WATER,
    electricKilowatts,
  };
}

/** On a day without work nothing of it runs but what runs all day. */
function hoursOf({ during }: Consumer, day: DayRecord, plan: Plan): number {
  if (during === "all day") return HOURS_OF_DAY;
  if (during === "work") return workingSeconds(day, plan) / SECONDS_PER_HOUR;
  return cleaningSeconds(day, plan) / SECONDS_PER_HOUR;
}

/** Sum over consumers; peaks: the larger of work and cleaning, what runs all day in both. */
export interface ServiceTotals {
  litres: number;
  hotLitres: number;
  heatKilowattHours: number;
  airCubicMetres: number;
  electricKilowattHours: number;
  hotLitresPerHour: number;
  heatKilowatts: number;
}

export function serviceTotals(uses: readonly ServiceUse[]): ServiceTotals {
  const sum = (of: (use: ServiceUse) => number) => uses.reduce((total, use) => total + of(use), 0);
  const peak = (of: (use: ServiceUse) => number) => {
    const during = (phase: Consumer["during"]) =>
      uses.filter((use) => use.during === phase || use.during === "all day").reduce((total, use) => total + of(use), 0);
    return Math.max(during("work"), during("cleaning"));
  };
  const hot = (value: (use: ServiceUse) => number) => (use: ServiceUse) => (use.celsius === null ? 0 : value(use));
  return {
    litres: sum(({ litres }) => litres),
    hotLitres: sum(hot(({ litres }) => litres)),
    heatKilowattHours: sum(({ heatKilowattHours }) => heatKilowattHours),
    airCubicMetres: sum(({ airCubicMetres }) => airCubicMetres),
    electricKilowattHours: sum(({ electricKilowattHours }) => electricKilowattHours),
    hotLitresPerHour: peak(hot(({ litresPerHour }) => litresPerHour)),
    heatKilowatts: peak(({ heatKilowatts }) => heatKilowatts),
  };
}

/** Kilograms of chemical oxygen demand that leave with the water; null where the plan gives none. */
export function codKilograms(wasteLitres: number, { utilities }: Plan): number | null {
  if (utilities === null || utilities.codPerLitre === null) return null;
  return wasteLitres * utilities.codPerLitre * (1 - utilities.codRemovedShare);
}
