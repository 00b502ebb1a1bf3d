import { requestJob } from "../jobs.ts";
import { releaseFromJob } from "../people.ts";
import type { DayState } from "../state/dayState.ts";
import { type Item, STUCK, STUNNED } from "../state/item.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { END, passHelped } from "../watchLimits.ts";
import { helpJob } from "./help.ts";

/*
 * Heads that were stunned and have not been stuck. Whoever waits longer than the plan's time gets help: one after another,
 * in the order in which their time was up.
 */

/** The head's stunning is over: its time runs. */
export function noteStunned(day: DayState, care: StunnedState, item: Item): void {
  const { late } = day.line.stunned!;
  if (late === null || (item.flags & (STUNNED | STUCK)) !== 0) return;
  item.flags |= STUNNED;
  wait(day, care, item, late.afterSeconds);
}

function wait(day: DayState, care: StunnedState, item: Item, seconds: number): void {
  const bound = day.path?.snapshot();
  care.waiting.push({ item, dueSeconds: day.now + seconds, bound, boundSince: day.now });
  scheduleLate(day, care);
}

function scheduleLate(day: DayState, { waiting }: StunnedState): void {
  day.calendar.schedule(day.slots.late, waiting[0]?.dueSeconds ?? Infinity);
}

/** The first head's time is up: somebody is called to it. */
export function turnLate(day: DayState): void {
  const care = day.stunned!;
  const { item } = care.waiting.shift()!;
  care.called.push(item);
  scheduleLate(day, care);
  if (care.called.length === 1 && care.helped === null) requestJob(day, helpJob(day));
}

/** The help is over: the head is stuck, or its time begins anew. */
export function turnHelp(day: DayState): void {
  const care = day.stunned!;
  const { sticks, afterSeconds } = day.line.stunned!.late!;
  const item = care.helped!;
  if (sticks) passHelped(day, item, care.to, END);
  else {
    for (const limit of day.line.stunned!.limits) item.stamps[limit] = day.now;
    wait(day, care, item, afterSeconds);
  }
  endHelp(day, care);
}

function endHelp(day: DayState, care: StunnedState): void {
  care.helped = null;
  day.calendar.schedule(day.slots.help, Infinity);
  releaseFromJob(day, helpJob(day));
  if (care.called.length > 0) requestJob(day, helpJob(day));
}

/** The head is stuck at its place, or gone: nobody has to come any more, and who is stunning it again stops. */
export function noteStuck(day: DayState, item: Item): void {
  if ((item.flags & STUNNED) === 0) return;
  const care = day.stunned!;
  item.flags &= ~STUNNED;
  if (care.helped === item) {
    endHelp(day, care);
    return;
  }
  const row = care.waiting.findIndex((each) => each.item === item);
  if (row >= 0) {
    care.waiting.splice(row, 1);
    scheduleLate(day, care);
    return;
  }
  care.called.splice(care.called.indexOf(item), 1);
  if (care.called.length === 0 && care.helped === null) withdraw(day);
}

/** A head that leaves the line needs nobody any more. */
export function noteGone(day: DayState, care: StunnedState, item: Item): void {
  if ((item.flags & STUNNED) !== 0) noteStuck(day, item);
  else if (care.helped === item) endHelp(day, care);
}

function withdraw(day: DayState): void {
  const crew = day.crewAt[day.line.stunned!.late!.crew];
  const row = crew?.jobs.indexOf(helpJob(day)) ?? -1;
  if (row >= 0) crew!.jobs.splice(row, 1);
}

/** Seconds for which somebody still sticks the head that its own station would begin now. */
export function stickingLeft(day: DayState, stage: StageState, item: Item): number {
  const care = day.stunned!;
  return stage === care.to && care.helped === item ? Math.max(0, care.helpEnds - day.now) : 0;
}
