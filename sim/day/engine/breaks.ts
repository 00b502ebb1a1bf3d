import { CREW_BREAK } from "../line/index.ts";
import { bookCrew } from "./accounting.ts";
import { addReturn, changeReturns } from "./returns.ts";
import type { CrewState } from "./state/crewState.ts";
import type { DayState } from "./state/dayState.ts";

/*
 * Breaks of people. Each person goes singly: who is free when the break begins at once, who is at work when that is done.
 * A break has its length, however late it began, unless the plan says when it ends. Whoever takes people in hand notes how
 * many breaks their crew has begun by then; so, when their work is done, it is known which ones they still owe.
 */

/** A break begins; `endsAt`: when it ends for everybody, NaN when each has its whole length. */
export function beginBreak(day: DayState, crew: CrewState, seconds: number, endsAt: number): void {
  // One that a safe stop held back until after its end is off.
  if (endsAt <= day.now) return;
  bookCrew(day, crew);
  const isFixed = !Number.isNaN(endsAt);
  const rest = crew.restSeconds.at(-1)!;
  crew.restSeconds.push(isFixed ? rest : rest + seconds);
  crew.breaksBegun++;
  if (isFixed) {
    crew.lastFixed = crew.breaksBegun;
    crew.fixedEnd = endsAt;
  }
  // Who is still away from the break before has this one as well.
  changeReturns(day, crew.index, (back) => (isFixed ? Math.max(back, endsAt) : back + seconds));
  crew.owing = crew.busy;
  const free = Math.max(0, crew.people - crew.away - crew.busy);
  crew.away += free;
  if (free > 0 || isFixed) bringBack(day, crew, free, isFixed ? endsAt : day.now + seconds);
}

/** People whose work is done go on the breaks that began meanwhile. `seen`: breaks begun when they took it in hand. */
export function goLate(day: DayState, crew: CrewState, people: number, seen: number): void {
  const back = backAt(day, crew, seen);
  if (back <= day.now) return;
  crew.owing -= people;
  crew.away += people;
  bringBack(day, crew, people, back);
}

/** People come back from their break. */
export function endBreak(day: DayState, crew: CrewState, people: number): void {
  bookCrew(day, crew);
  crew.away -= people;
  // Who did not get away before the end of a break with an end of its own does not go any more.
  if (crew.fixedEnd === day.now) crew.owing = stillOwing(day, crew);
}

/** The shift is over: nobody of the crew owes or has a break any more. */
export function dropBreaks(day: DayState, crew: CrewState): void {
  changeReturns(day, crew.index, () => Number.NaN);
  crew.away = 0;
  crew.owing = 0;
  crew.forgiven = crew.breaksBegun;
}

function bringBack(day: DayState, { index }: CrewState, people: number, seconds: number): void {
  addReturn(day, { seconds, action: CREW_BREAK, target: index, amount: people });
}

/** When whoever took work in hand after `seen` breaks would be back if they went now; not after now: they owe none. */
function backAt({ now }: DayState, crew: CrewState, seen: number): number {
  const { restSeconds, forgiven, lastFixed, fixedEnd } = crew;
  const since = Math.max(seen, forgiven);
  const back = now + restSeconds.at(-1)! - restSeconds[since]!;
  return lastFixed > since ? Math.max(back, fixedEnd) : back;
}

function stillOwing(day: DayState, crew: CrewState): number {
  let people = 0;
  for (const { crew: hands, stage, breaksSeen } of day.positionAt) {
    if (hands === crew && backAt(day, crew, breaksSeen) > day.now) people += stage.people;
  }
  for (const [job, seen] of day.jobBreaksSeen.entries()) {
    if (day.jobCrew[job] === crew.index && backAt(day, crew, seen) > day.now) people++;
  }
  return people;
}
