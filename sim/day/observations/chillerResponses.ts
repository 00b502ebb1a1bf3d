import type { Dwell, Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import type { DayRecord, StageRecord } from "../engine/index.ts";
import { type CoolingLoad, coolingLoad } from "./coolingLoad.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { openSeconds } from "./workingTime.ts";

const MEAN_SPAN = "average from the start of the first shift to the last carcass out";

/** Hooks in use, and the heat a chilling stage with computed times has to carry off. */
export function chillerResponses(plan: Plan): Response[] {
  return plan.line.flatMap((stage) => {
    if (!does(stage, "hold heads")) return [];
    return [
      ...(stage.headsPerHook > 1 || stage.dwell.kind === "chilling" ? hooks(stage) : []),
      ...(stage.dwell.kind === "chilling" ? heat(stage, plan) : []),
      ...(stage.cooling === undefined ? [] : coldRoom(stage, plan)),
    ];
  });
}

function hooks({ name, headsPerHook }: Dwell): Response[] {
  const words = headsPerHook > 1 ? `, if each holds ${headsPerHook}` : "";
  const of =
    (key: "mean" | "max"): Response["of"] =>
    (day) => {
      const record = stageRecordOf(day, name);
      return record === undefined ? null : record.queue[key] / headsPerHook;
    };
  return [
    row(`hooks.${name}.mean`, `Hooks taken in ${name}, average${words}`, "hooks", of("mean")),
    row(`hooks.${name}.max`, `Hooks taken in ${name}, most at once${words}`, "hooks", of("max")),
  ];
}

/**
 * Heat out of the carcasses down to their mean temperature at the end; the room's own load (fans, walls, doors, people)
 * is not in it. A carcass gives off more at first than later, so just after a fast start the true peak is higher.
 */
function heat({ name }: Dwell, plan: Plan): Response[] {
  const joules = (day: DayRecord) => stageRecordOf(day, name)?.heatJoules ?? null;
  const mean: Response["of"] = (day) => per(joules(day), openSeconds(day, plan) * 1000);
  const peak: Response["of"] = (day) =>
    peakKilowatts(stageRecordOf(day, name), day.finishSeconds - day.watchedFromSeconds);
  return [
    row(`heatLoad.${name}.mean`, `${name}: heat out of carcasses, ${MEAN_SPAN}`, "kW", mean),
    row(`heatLoad.${name}.peak`, `${name}: heat out of carcasses when it is fullest (Little's law)`, "kW", peak),
  ];
}

/** All heat of the room, and the electricity that follows from it; `energy.NAME` has that of the day. */
function coldRoom(stage: Dwell, plan: Plan): Response[] {
  const { name, cooling } = stage;
  const load = (read: (load: CoolingLoad) => number | null): Response["of"] => {
    return (day) => {
      const found = coolingLoad(stage, day, plan);
      return found === null ? null : read(found);
    };
  };
  const meaning =
    "Heat from carcasses, air through doors, people, walls, fans and lights. Electricity is that heat divided by the coefficient of performance, plus what fans and lights take.";
  const rows = [
    row(
      `coldLoad.${name}.mean`,
      `${name}: all heat taken out, ${MEAN_SPAN}`,
      "kW",
      load(({ heatKilowattHours, hours }) => per(heatKilowattHours, hours)),
    ),
    row(
      `coldLoad.${name}.peak`,
      `${name}: all heat taken out when it is fullest`,
      "kW",
      load(({ peakHeatKilowatts }) => peakHeatKilowatts),
    ),
    row(
      `coldPower.${name}.peak`,
      `${name}: electricity when it is fullest`,
      "kW",
      load(({ peakElectricKilowatts }) => peakElectricKilowatts),
      { better: "less" },
    ),
    row(`cop.${name}`, `${name}: heat taken out for each unit of electricity, without fans`, "", () => cooling!.cop, {
      better: "more",
    }),
  ];
  return rows.map((each) => ({ ...each, meaning }));
}

/** Heat per second that a carcass is in the stage, on the average, times the most that were in it at once (Little 1961). */
function peakKilowatts(record: StageRecord | undefined, watchedSeconds: number): number | null {
  if (record === undefined) return null;
  return per(record.heatJoules * record.queue.max, record.queue.mean * watchedSeconds * 1000);
}
