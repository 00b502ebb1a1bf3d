import type { Plan } from "../../asked/plan/index.ts";
import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import type { Response } from "./response.ts";
import { cleaningEndSeconds } from "./workingTime.ts";

/** Responses of the day as a whole: output, end of the day, time in system. */
export function dayResponses(plan: Plan): Response[] {
  const startSeconds = plan.day.shifts[0]?.fromSeconds ?? 0;
  return [
    {
      key: "headsPerHour",
      label: "Throughput, from the start of the shift to the end of work",
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
      label: "End of work on the line",
      unit: "s after day start",
      format: "clock",
      better: "less",
      of: (day) => day.workFinishSeconds,
    },
    {
      key: "lastOut",
      label: "Last carcass out, chilling included",
      unit: "s after day start",
      format: "clock",
      better: "less",
      of: (day) => day.finishSeconds,
    },
    ...cleaned(plan),
    {
      key: "overtime",
      label: `Overtime after the last shift${plan.day.cleaning === null ? "" : ", cleaning included"}`,
      unit: "s",
      format: "duration",
      better: "less",
      of: (day) => Math.max(0, (cleaningEndSeconds(day, plan) ?? day.workFinishSeconds) - day.shiftEndSeconds),
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

function cleaned(plan: Plan): Response[] {
  if (plan.day.cleaning === null) return [];
  return [
    {
      key: "cleaningEnd",
      label: "End of cleaning",
      unit: "s after day start",
      format: "clock",
      better: "less",
      of: (day) => cleaningEndSeconds(day, plan),
    },
    ...(plan.day.cleaning.sections ?? []).map(
      ({ section }): Response => ({
        key: `cleaningEnd.${section}`,
        label: `${section}: end of cleaning`,
        unit: "s after day start",
        format: "clock",
        better: "less",
        of: ({ cleaning = [] }) => cleaning.find((each) => each.section === section)?.toSeconds ?? null,
      }),
    ),
  ];
}

/**
 * Carcasses out, divided by the hours from the first shift's start to the end of the last work at a station. Breaks, the
 * filling and the emptying of the line count as time; chilling after the last work does not. On a day that did not end by
 * itself it is what was reached. Null when work ended at or before the first shift's start.
 */
function headsPerHour(day: DayRecord, startSeconds: number): number | null {
  const hours = (day.workFinishSeconds - startSeconds) / 3600;
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
    row("mean", "average", (day) => day.timeInSystem.mean),
    row("p95", "95 % of heads stay below", (day) => day.timeInSystem.quantiles.p95),
    row("max", "longest", (day) => day.timeInSystem.max),
  ];
}
