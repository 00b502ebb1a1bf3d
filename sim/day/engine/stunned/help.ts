import type { DayState } from "../state/dayState.ts";
import { STUCK, STUNNED } from "../state/item.ts";
import { passHelped, START, tallyFromStunning } from "../watchLimits.ts";

/** The job of helping a stunned head that waits too long: behind those of repairs and vessels (jobs.ts). */
export function helpJob({ breakdownAt, vesselAt }: DayState): number {
  return breakdownAt.length + vesselAt.length;
}

/** Somebody is there for the first head that was called for. */
export function beginHelp(day: DayState): void {
  const care = day.stunned!;
  const { takesSeconds, sticks } = day.line.stunned!.late!;
  const item = care.called.shift()!;
  care.helped = item;
  care.helpEnds = day.now + takesSeconds;
  if (sticks) {
    care.stuckThere++;
    item.flags = (item.flags & ~STUNNED) | STUCK;
    passHelped(day, item, care.to, START);
  } else {
    care.stunnedAgain++;
    tallyFromStunning(day, item);
  }
  day.recorders?.heads?.help?.(item.number, sticks);
  day.path?.helpBegins();
  day.calendar.schedule(day.slots.help, care.helpEnds);
}
