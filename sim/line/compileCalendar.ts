import type { Plan } from "../plan/plan.ts";
import { type CalendarColumns, CREW_BREAK, CREW_PEOPLE, HANGING_ENDS, STAGE_PAUSE } from "./compiledLine.ts";
import type { Step } from "./steps.ts";

interface Entry {
  seconds: number;
  action: number;
  target: number;
  amount: number;
}

/**
 * Planned changes in time order; at the same instant ends come before beginnings. After the last shift the people of
 * that shift stay (overtime) until the line is clear; between shifts that do not meet nobody is there.
 */
export function compileCalendar(plan: Plan, all: Step[]): CalendarColumns {
  const entries = [...shiftEntries(plan), ...breakEntries(plan, all), ...closingEntries(plan)];
  entries.sort((a, b) => a.seconds - b.seconds || rank(a) - rank(b));
  return {
    count: entries.length,
    seconds: Float64Array.from(entries, (entry) => entry.seconds),
    action: Int8Array.from(entries, (entry) => entry.action),
    target: Int32Array.from(entries, (entry) => entry.target),
    amount: Int32Array.from(entries, (entry) => entry.amount),
  };
}

function rank(entry: Entry): number {
  return entry.action * 2 + (entry.amount < 0 ? 0 : 1);
}

function shiftEntries(plan: Plan): Entry[] {
  return plan.crews.flatMap((crew, target) =>
    plan.day.shifts.flatMap((shift, index) => {
      const begins = { seconds: shift.fromSeconds, action: CREW_PEOPLE, target, amount: crew.people[index]! };
      const following = plan.day.shifts[index + 1];
      if (following === undefined || following.fromSeconds === shift.toSeconds) return [begins];
      return [begins, { seconds: shift.toSeconds, action: CREW_PEOPLE, target, amount: 0 }];
    }),
  );
}

function breakEntries(plan: Plan, all: Step[]): Entry[] {
  const crews = plan.crews.map((crew) => crew.name);
  const stages = all.map((step) => step.name);
  return plan.day.breaks.flatMap((pause) => {
    const pair = (action: number, target: number, later: number): Entry[] => [
      { seconds: pause.atSeconds + later, action, target, amount: 1 },
      { seconds: pause.atSeconds + later + pause.lengthSeconds, action, target, amount: -1 },
    ];
    return [
      ...pause.crews.flatMap((name) => pair(CREW_BREAK, crews.indexOf(name), pause.laterSeconds[name] ?? 0)),
      ...pause.stages.flatMap((name) => pair(STAGE_PAUSE, stages.indexOf(name), 0)),
    ];
  });
}

function closingEntries(plan: Plan): Entry[] {
  if (plan.day.closing.rule === "finish") return [];
  return [{ seconds: plan.day.closing.atSeconds, action: HANGING_ENDS, target: 0, amount: 1 }];
}
