import type { Consumer, Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS, type Step, steps } from "../line/index.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";
import { drawsWater } from "./serviceResponses.ts";
import { plantUse, runningHours, type UtilityUse, usesEnergy, usesWater, utilityUse } from "./utilityUse.ts";
import { workingSeconds } from "./workingTime.ts";

/** Water and energy of the plant and of each stage that uses some; nothing for a plan without any. "Per head" is per carcass out. */
export function utilityResponses(plan: Plan): Response[] {
  const all = steps(plan);
  const [wet, powered] = [all.filter(usesWater), all.filter(usesEnergy)];
  const plant = plantReading(plan);
  const served = plan.utilities?.consumers ?? [];
  return [
    // All fresh water leaves as waste water: none is taken to stay on carcasses or to dry away.
    ...(wet.length > 0 || served.some(drawsWater)
      ? [...threeRows(WATER, plant), ...threeRows(WASTE_WATER, plant)]
      : []),
    ...(wet.some(washesAgain) ? [washWaterReused(plan)] : []),
    ...(powered.length > 0 || served.some(drawsPower) ? threeRows(ENERGY, plant) : []),
    ...wet.flatMap((step) => threeRows(WATER, stageReading(step, plan))),
    ...powered.flatMap((step) => threeRows(ENERGY, stageReading(step, plan))),
  ];
}

function drawsPower({ powerKilowatts, airPerHour }: Consumer): boolean {
  return powerKilowatts > 0 || airPerHour > 0;
}

function washesAgain(step: Step): boolean {
  return does(step, "handle crates") && step.of.waterReusedShare > 0;
}

interface Utility {
  key: string;
  keyPerHour: string;
  label: string;
  unit: string;
  unitPerHour: string;
  of: (use: UtilityUse) => number;
}

const WATER: Utility = {
  key: "water",
  keyPerHour: "waterPerHour",
  label: "fresh water",
  unit: "L",
  unitPerHour: "L/h",
  of: ({ freshLitres }) => freshLitres,
};
const WASTE_WATER: Utility = {
  ...WATER,
  key: "wasteWater",
  keyPerHour: "wasteWaterPerHour",
  label: "waste water (all fresh water)",
};
const ENERGY: Utility = {
  key: "energy",
  keyPerHour: "power",
  label: "energy",
  unit: "kWh",
  unitPerHour: "kW",
  of: ({ kilowattHours }) => kilowattHours,
};

/** Whose use is read, over which hours. */
interface Reading {
  who: string;
  after: string;
  hourWords: string;
  use: (day: DayRecord) => UtilityUse;
  hours: (day: DayRecord) => number;
}

function plantReading(plan: Plan): Reading {
  return {
    who: "Plant",
    after: "",
    hourWords: "per hour of work",
    use: (day) => plantUse(day, plan),
    hours: (day) => workingSeconds(day, plan) / 3600,
  };
}

function stageReading(step: Step, plan: Plan): Reading {
  return {
    who: step.name,
    after: `.${step.name}`,
    hourWords: "per hour it ran",
    use: (day) => utilityUse(step, day, plan),
    hours: (day) => runningHours(step, day, plan),
  };
}

/** Of the day, per carcass out, per hour. */
function threeRows(utility: Utility, reading: Reading): Response[] {
  const { key, keyPerHour, unit, unitPerHour } = utility;
  const { after, hours, hourWords } = reading;
  const of = (day: DayRecord) => utility.of(reading.use(day));
  const label = `${reading.who}: ${utility.label}`;
  const less = { better: "less" } as const;
  const perHead: Response["of"] = (day) => per(of(day), day.heads.out[CARCASS] ?? 0);
  return [
    row(`${key}${after}`, label, unit, of, less),
    row(`${key}PerHead${after}`, `${label} per head`, `${unit}/head`, perHead, less),
    row(`${keyPerHour}${after}`, `${label} ${hourWords}`, unitPerHour, (day) => per(of(day), hours(day)), less),
  ];
}

function washWaterReused(plan: Plan): Response {
  const of = (day: DayRecord) => plantUse(day, plan).reusedLitres;
  return row("waterReused", "Plant: wash water used again on crates", "L", of, { better: "more" });
}
