import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Response } from "./response.ts";

/** Responses of the day as a whole: output, end of the day, time in system. */
export function dayResponses(plan: Plan): Response[] {
  const startSeconds = plan.day.shifts[0]?.fromSeconds ?? 0;
  return [
    {
      key: "headsPerHour",
      label: "Throughput, shift start to last head out",
      unit: "carcasses/h",
      format: "number",
      better: "more",
      of: (day) => headsPerHour(day, startSeconds),
    },
    {
      key: "carcasses",
      label: "Carcasses out",
      unit: "carcasses",
      format: "number",
      better: "more",
      of: (day) => day.heads.out[CARCASS] ?? 0,
    },
    {
      key: "finish",
      label: "Last head out",
      unit: "s after day start",
      format: "clock",
      better: "less",
      of: (day) => day.finishSeconds,
    },
    {
      key: "overtime",
      label: "Overtime after the last shift",
      unit: "s",
      format: "duration",
      better: "less",
      of: (day) => Math.max(0, day.finishSeconds - day.shiftEndSeconds),
    },
    {
      key: "unfinished",
      label: "Days that did not end by themselves (cut off at the longest day, or stuck)",
      unit: "share of days",
      format: "share",
      better: "less",
      of: (day) => (day.status === "finished" ? 0 : 1),
    },
    ...timeInSystem(),
  ];
}

/**
 * Carcasses out, divided by the hours from the first shift's start to the last head's leaving. Breaks, the filling and
 * the emptying of the line count as time. On a day that did not end by itself it is what was reached. Null when the day
 * ended at or before the first shift's start.
 */
function headsPerHour(day: DayRecord, startSeconds: number): number | null {
  const hours = (day.finishSeconds - startSeconds) / 3600;
  return hours > 0 ? (day.heads.out[CARCASS] ?? 0) / hours : null;
}

function timeInSystem(): Response[] {
  const row = (key: string, label: string, of: (day: DayRecord) => number): Response => ({
    key: `timeInSystem.${key}`,
    label: `Time from arrival to leaving the line, ${label}`,
    unit: "s",
    format: "duration",
    better: "less",
    of: (day) => (day.timeInSystem.count === 0 ? null : of(day)),
  });
  return [
    row("mean", "mean", (day) => day.timeInSystem.mean),
    row("p95", "95 % stay below", (day) => day.timeInSystem.quantiles.p95),
    row("max", "longest", (day) => day.timeInSystem.max),
  ];
}
