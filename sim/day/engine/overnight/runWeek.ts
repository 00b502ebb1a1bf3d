import type { Plan } from "../../../asked/plan/plan.ts";
import { compileLine } from "../../line/index.ts";
import type { DaysRecord } from "../dayRecord.ts";
import type { DayOptions } from "../state/dayState.ts";
import { runDays, type WorkingDay } from "./runDays.ts";

/** A plan's week as the engine wants it. Built once, never changed. */
export interface CompiledWeek {
  days: WorkingDay[];
  calendarDays: number;
  machinesAsNew: boolean;
  orders: NonNullable<Plan["week"]>["orders"];
}

/** Turns the week of a checked plan into lines, one a working day. */
export function compileWeek({ week }: Plan): CompiledWeek {
  const { days, machinesAsNew, orders } = week!;
  const working = days.flatMap(({ plan, startSeconds }, number) =>
    plan === null ? [] : [{ line: compileLine(plan), startSeconds, number }],
  );
  return { days: working, calendarDays: days.length, machinesAsNew, orders };
}

/** Simulates one week: a pure function of the compiled week, the seed and the replication number. Throws what `runDay` throws. */
export function runWeek(
  { days, ...calendar }: CompiledWeek,
  options: Omit<DayOptions, "goesOn" | "warmUpHeads">,
): DaysRecord {
  return runDays(days, { ...options, ...calendar });
}
