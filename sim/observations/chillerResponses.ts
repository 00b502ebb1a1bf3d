import type { DayRecord, StageRecord } from "../engine/index.ts";
import type { Dwell, Plan } from "../plan/index.ts";
import type { Response } from "./response.ts";
import { per, row } from "./row.ts";
import { stageRecordOf } from "./stageRecordOf.ts";
import { openSeconds } from "./workingTime.ts";

/** Hooks in use, and the heat a chilling stage with computed times has to carry off. */
export function chillerResponses(plan: Plan): Response[] {
  return plan.line.flatMap((stage) => {
    if (stage.kind !== "dwell") return [];
    return [
      ...(stage.headsPerHook > 1 || stage.dwell.kind === "chilling" ? hooks(stage) : []),
      ...(stage.dwell.kind === "chilling" ? heat(stage, plan) : []),
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
    row(`hooks.${name}.mean`, `Hooks taken in ${name}, time average${words}`, "hooks", of("mean")),
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
  const span = "mean from the first shift's start to the last carcass out";
  return [
    row(`heatLoad.${name}.mean`, `${name}: heat out of carcasses, ${span}`, "kW", mean),
    row(`heatLoad.${name}.peak`, `${name}: heat out of carcasses with the most in it (Little's law)`, "kW", peak),
  ];
}

/** Heat per second that a carcass is in the stage, on the average, times the most that were in it at once (Little 1961). */
function peakKilowatts(record: StageRecord | undefined, watchedSeconds: number): number | null {
  if (record === undefined) return null;
  return per(record.heatJoules * record.queue.max, record.queue.mean * watchedSeconds * 1000);
}
