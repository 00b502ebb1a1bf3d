import type { Cooling, Dwell, Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { openSeconds } from "./workingTime.ts";

const SECONDS_PER_HOUR = 3600;
const JOULES_PER_KILOWATT_HOUR = 3_600_000;

/** What a cold room took out on one day, and what that cost in electricity. */
export interface CoolingLoad {
  /** In which the room was kept cold: from the first shift's start to the last carcass out. */
  hours: number;
  /** Means over those hours, kilowatts of heat. */
  carcasses: number;
  doors: number;
  people: number;
  walls: number;
  /** Fans and lights: electricity that comes back as heat. */
  fans: number;
  lights: number;
  /** Of all heat. */
  heatKilowattHours: number;
  /** Of the compressors, the fans and the lights. */
  electricKilowattHours: number;
  /** With the most carcasses in it (Little's law), everything else at its mean. */
  peakHeatKilowatts: number;
  peakElectricKilowatts: number;
}

/** Null for a dwell without a cold room of its own, and for a stage that is not in the day. */
export function coolingLoad(stage: Dwell, day: DayRecord, plan: Plan): CoolingLoad | null {
  const record = stageRecordOf(day, stage.name);
  if (stage.cooling === undefined || record === undefined) return null;
  const { cop, fanKilowatts, lightKilowatts } = stage.cooling;
  const hours = openSeconds(day, plan) / SECONDS_PER_HOUR;
  const standing = standingKilowatts(stage.cooling);
  const carcassKilowattHours = record.heatJoules / JOULES_PER_KILOWATT_HOUR;
  const heatKilowattHours = carcassKilowattHours + standing * hours;
  const watched = day.finishSeconds - day.watchedFromSeconds;
  const peakCarcasses =
    record.queue.mean * watched > 0 ? (record.heatJoules * record.queue.max) / (record.queue.mean * watched * 1000) : 0;
  const peakHeatKilowatts = peakCarcasses + standing;
  const motors = fanKilowatts + lightKilowatts;
  return {
    hours,
    carcasses: hours > 0 ? carcassKilowattHours / hours : 0,
    doors: stage.cooling.doorKilowatts,
    people: stage.cooling.peopleKilowatts,
    walls: stage.cooling.wallKilowatts,
    fans: fanKilowatts,
    lights: lightKilowatts,
    heatKilowattHours,
    electricKilowattHours: heatKilowattHours / cop + motors * hours,
    peakHeatKilowatts,
    peakElectricKilowatts: peakHeatKilowatts / cop + motors,
  };
}

/** Heat that comes in whether there are carcasses or not. */
export function standingKilowatts(cooling: Cooling): number {
  const { fanKilowatts, lightKilowatts, wallKilowatts, peopleKilowatts, doorKilowatts } = cooling;
  return fanKilowatts + lightKilowatts + wallKilowatts + peopleKilowatts + doorKilowatts;
}
