import type { Crew, Plan } from "../../asked/plan/plan.ts";
import { does } from "../../text/kinds/index.ts";
import {
  type CalendarColumns,
  CHAIN_PACE,
  CREW_BREAK,
  CREW_PEOPLE,
  HANGING_ENDS,
  STAGE_CLOSES,
  STAGE_PAUSE,
} from "./compiledLine.ts";
import type { Step } from "./steps.ts";

interface Entry {
  seconds: number;
  action: number;
  target: number;
  amount: number;
  /** The shift that begins; left out elsewhere. */
  shift?: number;
  length: number;
  /** Of a break that ends at its time; NaN otherwise. */
  end: number;
}

/**
 * Planned changes in time order. After the last shift the people of that shift stay (overtime) until the line is clear;
 * between shifts that do not meet nobody is there. Before the first head of the day come the pre-start checks.
 */
export function compileCalendar(plan: Plan, all: Step[]): CalendarColumns {
  const entries = [
    ...shiftEntries(plan),
    ...breakEntries(plan, all),
    ...closingEntries(plan),
    ...paceEntries(all),
    ...overnightEntries(plan, all),
  ];
  entries.sort((a, b) => a.seconds - b.seconds || a.action - b.action);
  return {
    count: entries.length,
    seconds: Float64Array.from(entries, (entry) => entry.seconds),
    action: Int8Array.from(entries, (entry) => entry.action),
    target: Int32Array.from(entries, (entry) => entry.target),
    amount: Int32Array.from(entries, (entry) => entry.amount),
    shift: Int8Array.from(entries, (entry) => entry.shift ?? -1),
    lengthSeconds: Float64Array.from(entries, (entry) => entry.length),
    endSeconds: Float64Array.from(entries, (entry) => entry.end),
  };
}

function shiftEntries(plan: Plan): Entry[] {
  return plan.crews.flatMap((crew, target) =>
    plan.day.shifts.flatMap((shift, index) => {
      const checks = index === 0 ? plan.day.preStartSeconds : 0;
      const entry = { action: CREW_PEOPLE, target, length: 0, end: Number.NaN };
      const seconds = shift.fromSeconds + checks;
      const begins = { ...entry, seconds, amount: plannedPeople(crew)[index]!, shift: index };
      const following = plan.day.shifts[index + 1];
      // Whoever leaves when their own work is done stays beyond their last shift, whatever shifts of others follow.
      if (crew.leavesOnItsOwn && index > lastManned(crew)) return [];
      if (crew.leavesOnItsOwn && index === lastManned(crew)) return [begins];
      if (following === undefined || following.fromSeconds === shift.toSeconds) return [begins];
      return [begins, { ...entry, seconds: shift.toSeconds, amount: 0 }];
    }),
  );
}

function lastManned(crew: Crew): number {
  return plannedPeople(crew).findLastIndex((there) => there > 0);
}

/** By shift, whoever is ill where somebody steps in. */
export function plannedPeople({ people, cover }: Crew): number[] {
  return people.map((there, shift) => Math.max(there, cover?.atLeast[shift] ?? 0));
}

function breakEntries(plan: Plan, all: Step[]): Entry[] {
  const crews = plan.crews.map((crew) => crew.name);
  const stages = all.map((step) => step.name);
  return plan.day.breaks.flatMap((pause) => {
    const begins = (action: number, target: number, later: number): Entry => ({
      seconds: pause.atSeconds + later,
      action,
      target,
      amount: 0,
      length: pause.lengthSeconds,
      end: pause.ends === "at its time" ? pause.atSeconds + later + pause.lengthSeconds : Number.NaN,
    });
    return [
      ...pause.crews.map((name) => begins(CREW_BREAK, crews.indexOf(name), pause.laterSeconds[name] ?? 0)),
      ...pause.stages.map((name) => begins(STAGE_PAUSE, stages.lastIndexOf(name), 0)),
    ];
  });
}

function closingEntries(plan: Plan): Entry[] {
  if (plan.day.closing.rule === "finish") return [];
  return [
    { seconds: plan.day.closing.atSeconds, action: HANGING_ENDS, target: 0, amount: 0, length: 0, end: Number.NaN },
  ];
}

/** What a station begins looks at the hour itself; the step that a chain is making changes with it. */
function paceEntries(all: Step[]): Entry[] {
  return all.flatMap((step, target) =>
    does(step, "carry stations")
      ? step.of.pace.map(({ fromSeconds }, amount) => ({
          ...{ seconds: Math.max(0, fromSeconds), action: CHAIN_PACE, target, amount },
          ...{ length: 0, end: Number.NaN },
        }))
      : [],
  );
}

/** Dwell stages that no head leaves after an hour: what is in them then stays for the next day. */
function overnightEntries(plan: Plan, all: Step[]): Entry[] {
  const names = all.map((step) => step.name);
  return (plan.day.overnight ?? []).map(({ stage, untilSeconds }) => ({
    ...{ seconds: untilSeconds, action: STAGE_CLOSES, target: names.lastIndexOf(stage) },
    ...{ amount: 0, length: 0, end: Number.NaN },
  }));
}
