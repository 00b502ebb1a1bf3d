import { dayJson, formatPath, isRecord, type Plan } from "../../asked/plan/index.ts";
import { type Reading, read } from "../../text/units/index.ts";
import { namedOne } from "./named.ts";
import { PlanDraft } from "./planDraft.ts";
import { cannot } from "./told.ts";

/** "Thursday", or several with commas: days of the week on which work is done. */
export function daysNamed({ week }: Plan, written: string): Reading<string[]> {
  if (week === undefined) return cannot("this plan is of one day alone", "leave --on out, or name a plan with a week");
  const names = week.days.flatMap(({ name, plan }) => (plan === null ? [] : [name]));
  const days: string[] = [];
  for (const text of written.split(",")) {
    const found = namedOne(text.trim(), names, "a working day of this week");
    if (found.fault !== null) return found;
    days.push(found.value);
  }
  return read(days);
}

/** The plan of that day, to be changed. */
export function dayDraft({ week }: Plan, json: unknown, name: string): PlanDraft {
  const plan = week!.days.find((day) => day.name === name)!.plan!;
  return new PlanDraft(plan, dayJson(json as Record<string, unknown>, writtenDay(json, name)).json);
}

/** What was set in the day's plan, as a study sets it in the week: behind all else that is different on that day. */
export function onDay(json: unknown, name: string, set: Record<string, unknown>): Record<string, unknown> {
  const before = writtenDay(json, name).set;
  const own = isRecord(before) ? before : {};
  return { [formatPath(["week", "days", name, "set"])]: { ...own, ...set } };
}

function writtenDay(json: unknown, name: string): Record<string, unknown> {
  const { days } = (json as { week: { days: Record<string, unknown>[] } }).week;
  return days.find((day) => day.name === name)!;
}
