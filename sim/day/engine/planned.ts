import {
  CHAIN,
  CHAIN_PACE,
  CREW_BREAK,
  CREW_PEOPLE,
  FLEET_BACK,
  HANGING_ENDS,
  STAGE_CLOSES,
  STAGE_PAUSE,
} from "../line/index.ts";
import { bookCrew } from "./accounting.ts";
import { admitLoads } from "./arrivals.ts";
import { beginBreak, dropBreaks, endBreak } from "./breaks.ts";
import { callCrew } from "./calls.ts";
import { interruptChain, resumeChain } from "./chainRing.ts";
import { explainIdle, scheduleDwell, startWaiting } from "./flow.ts";
import { checkFinished } from "./leaveLine.ts";
import { endOwnTime, noteAway } from "./ownTime.ts";
import { isStaffAway, isUnmanned } from "./people.ts";
import { addReturn, takeReturn } from "./returns.ts";
import type { ChainState } from "./state/chainState.ts";
import type { CrewState } from "./state/crewState.ts";
import type { DayState } from "./state/dayState.ts";
import { pacedSeconds } from "./state/pace.ts";
import type { StageState } from "./state/stageState.ts";

/** The calendar's next entry: shifts, breaks, pauses, the end of hanging. */
export function turnCalendar(day: DayState): void {
  const row = day.calendarRow++;
  scheduleCalendar(day);
  dropOvertaken(day, row);
  if (stopsProtected(day, row) && day.headsInGate[day.gates.safeStop]!.heads > 0) day.heldRows.push(row);
  else applyRow(day, row);
}

/** The end of a shift that is still held back is off when the crew's next shift begins. */
function dropOvertaken(day: DayState, row: number): void {
  const { action, target } = day.line.calendar;
  if (action[row] !== CREW_PEOPLE) return;
  const held = day.heldRows.findIndex((other) => action[other] === CREW_PEOPLE && target[other] === target[row]);
  if (held < 0) return;
  day.heldRows.splice(held, 1);
  openStretch(day);
}

/** The protected stretch is empty: the planned stops that waited for it begin, for their full length. */
export function applyHeldRows(day: DayState): void {
  // One after another, and the stretch stays closed until the last of them has begun.
  for (const row of day.heldRows) applyRow(day, row);
  day.heldRows.length = 0;
  openStretch(day);
}

export function scheduleCalendar(day: DayState): void {
  const { calendar, slots } = day.line;
  const next = day.calendarRow < calendar.count ? calendar.seconds[day.calendarRow]! : Infinity;
  day.calendar.schedule(slots.calendar, next);
}

/** A crew, a machine or the fleet's crates are back. */
export function turnReturn(day: DayState): void {
  const { action, target, amount } = takeReturn(day);
  if (action === FLEET_BACK) {
    day.fleetFree += amount;
    admitLoads(day);
    return;
  }
  if (action === STAGE_PAUSE) {
    changePause(day, day.stageAt[target]!, -1);
    return;
  }
  const crew = day.crewAt[target]!;
  endBreak(day, crew, amount);
  callAgain(day, crew);
}

/** A break, a pause or the end of a shift that takes somebody off the stretch which no stop may catch a head in. */
export function stopsProtected(day: DayState, row: number): boolean {
  const { calendar, crews, stages } = day.line;
  const target = calendar.target[row]!;
  if (calendar.action[row] === CREW_BREAK) return crews.protected[target] === 1;
  if (calendar.action[row] === STAGE_PAUSE) return stages.protected[target] === 1;
  if (calendar.action[row] !== CREW_PEOPLE || !crews.protected[target]) return false;
  return calendar.amount[row] === 0 && day.crewAt[target]!.people > 0;
}

function applyRow(day: DayState, row: number): void {
  const { calendar } = day.line;
  const target = calendar.target[row]!;
  const action = calendar.action[row]!;
  if (action === HANGING_ENDS) {
    endHanging(day);
    return;
  }
  if (action === STAGE_CLOSES) {
    closeForTheDay(day, day.stageAt[target]!);
    return;
  }
  if (action === CHAIN_PACE) {
    changePace(day, day.stageAt[target]!.chain!, calendar.amount[row]!);
    return;
  }
  if (action === STAGE_PAUSE) {
    addReturn(day, { seconds: day.now + calendar.lengthSeconds[row]!, action, target, amount: 0 });
    changePause(day, day.stageAt[target]!, 1);
    return;
  }
  const crew = day.crewAt[target]!;
  if (action === CREW_PEOPLE) changePeople(day, crew, row);
  else beginBreak(day, crew, calendar.lengthSeconds[row]!, calendar.endSeconds[row]!);
  callAgain(day, crew);
}

/** Whoever holds a head finishes it first: only free people go at once. */
function changePeople(day: DayState, crew: CrewState, row: number): void {
  const { amount, shift } = day.line.calendar;
  bookCrew(day, crew);
  crew.people = crew.present[shift[row]!] ?? 0;
  crew.missing = amount[row]! - crew.people;
  if (crew.people === 0) dropBreaks(day, crew);
}

/** People of the crew went or came: its stations look again. */
function callAgain(day: DayState, crew: CrewState): void {
  for (const stage of crew.stations) notePlannedAbsence(day, stage);
  countUnmanned(day);
  callCrew(day, crew);
  for (const stage of crew.stations) startWaiting(day, stage);
}

/** The stretch's first stage looks again, when the event is over, whether it may begin heads. */
function openStretch(day: DayState): void {
  const { safeStop } = day.gates;
  if (safeStop < 0) return;
  day.gateOpened[safeStop] = 1;
  day.mustSettle = true;
}

/** Counts the stations on the protected stretch at which nobody may work by plan: no head begins the stretch then. */
export function countUnmanned(day: DayState): void {
  const { stages, gates } = day.line;
  if (gates.safeStop < 0) return;
  day.unmanned = 0;
  for (const stage of day.stageAt) {
    if (!stages.protected[stage.index]) continue;
    if (stage.pauses > 0 || isUnmanned(stage)) day.unmanned++;
  }
  openStretch(day);
}

function changePause(day: DayState, stage: StageState, change: number): void {
  stage.pauses += change;
  notePlannedAbsence(day, stage);
  countUnmanned(day);
  const { kind, chain } = stage;
  if (kind !== CHAIN || chain === null) {
    startWaiting(day, stage);
    return;
  }
  chain.pauses += change;
  if (change > 0) interruptChain(day, chain);
  else resumeChain(day, chain);
}

/** Whether a break, a pause or the hours of its crews keep everybody from working there. */
export function notePlannedAbsence(day: DayState, stage: StageState): void {
  noteAway(day, stage, stage.pauses > 0 || isStaffAway(day, stage));
}

/** The chain goes at another speed from now on; what is left of the step that it is making takes the time of that speed. */
function changePace(day: DayState, chain: ChainState, row: number): void {
  const seconds = pacedSeconds(day.stages.pace[chain.stage.index]!, row, chain.usualSeconds);
  const ratio = seconds / chain.secondsPerShackle;
  chain.secondsPerShackle = seconds;
  if (chain.isDue || ratio === 1) return;
  if (chain.downCauses + chain.pauses > 0) chain.left *= ratio;
  else day.calendar.schedule(chain.slot, day.now + (day.calendar.times[chain.slot]! - day.now) * ratio);
}

/** No head leaves the stage any more today; one that waits for a place behind it, its time being up, still goes. */
function closeForTheDay(day: DayState, stage: StageState): void {
  stage.isClosed = true;
  day.path?.closes(stage.index);
  scheduleDwell(day, stage);
  checkFinished(day);
}

function endHanging(day: DayState): void {
  day.hangingClosed = true;
  for (const stage of day.stageAt) if (isFeeding(day, stage)) endOwnTime(day, stage);
  explainIdle(day, day.hanging);
  checkFinished(day);
}

/** A crate step on the way to the hanging point. */
function isFeeding({ line, hanging }: DayState, { index }: StageState): boolean {
  return line.supply.kind === "loads" && index < hanging.index && index <= line.supply.feeding;
}
