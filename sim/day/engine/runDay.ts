import {
  CHAIN,
  type CompiledLine,
  DWELL,
  SLOT_BREAKDOWN,
  SLOT_CALENDAR,
  SLOT_CHAIN,
  SLOT_DWELL,
  SLOT_HELP,
  SLOT_HOLD,
  SLOT_LATE,
  SLOT_LOAD,
  SLOT_POSITION,
  SLOT_RETURN,
  SLOT_TRAVEL,
  SLOT_VESSEL,
} from "../line/index.ts";
import { headArrives, loadArrives, startSupply } from "./arrivals.ts";
import { breakPosition, repairPosition, startCalendarClocks, turnBreakdown } from "./breakdowns.ts";
import { endChainStep, startChains, tryMoveChain } from "./chainMoves.ts";
import { wakeChain } from "./chainRing.ts";
import { checkConservation } from "./conservation.ts";
import type { DayRecord } from "./dayRecord.ts";
import { busiestStage, DayTooLong, PlantTooFull } from "./dayTooLong.ts";
import { sendPeople } from "./dispatch.ts";
import { drainDwell, endDwell, endTravel, endWork, startWaiting } from "./flow.ts";
import { emptyingJob } from "./jobs.ts";
import { KillStops } from "./killStops/killStops.ts";
import { beginWith } from "./overnight/atStart.ts";
import { callKept, carryOver } from "./overnight/carryOver.ts";
import { releaseFromJob } from "./people.ts";
import {
  applyHeldRows,
  countUnmanned,
  notePlannedAbsence,
  scheduleCalendar,
  turnCalendar,
  turnReturn,
} from "./planned.ts";
import { recordOf } from "./recordOf.ts";
import { isSerial } from "./serial/isSerial.ts";
import { runAhead } from "./serial/runAhead.ts";
import { type DayOptions, DayState, NOTHING, POSITION_BREAKS, WORK_ENDS } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";
import type { VesselState } from "./state/vesselState.ts";
import { look, noteEvent, turnHold } from "./stunned/hold.ts";
import { turnHelp, turnLate } from "./stunned/late.ts";
import { emptyVessel } from "./vessels.ts";

/**
 * Simulates one day: a pure function of the compiled line, the seed and the replication number.
 *
 * Throws `ConservationError` (only with `check`) when heads or crates were lost or doubled: a fault of the engine; and
 * `DayTooLong` when it takes more than `mostEvents`, `PlantTooFull` when more than `mostPresent` stand in the plant at once.
 */
export function runDay(line: CompiledLine, options: DayOptions): DayRecord {
  const day = (isSerial(line, options) ? runAhead(line, options) : null) ?? startDay(line, options);
  const status = advance(day, line.ceilingSeconds);
  return recordOf(day, status === "running" ? "ceiling" : status);
}

/** The day before, which has ended, and the seconds from its start to that of the new one. */
export interface DayBefore {
  day: DayState;
  secondsBefore: number;
  /** Machines come from the night as new; else their uptimes go on. */
  machinesAsNew: boolean;
}

/** A day with its first events scheduled and nothing simulated yet; with what the day before left in the plant. */
export function startDay(line: CompiledLine, options: DayOptions, before: DayBefore | null = null): DayState {
  const day = new DayState(line, options, before !== null || line.atStart !== null);
  if (before === null) beginWith(day);
  else carryOver(before, day);
  if (options.killStops && line.killLine !== null) day.killStops = new KillStops(line.killLine, day);
  startCalendarClocks(day);
  startChains(day);
  scheduleCalendar(day);
  countUnmanned(day);
  for (const stage of day.stageAt) notePlannedAbsence(day, stage);
  startSupply(day);
  if (before !== null || line.atStart !== null) callKept(day);
  // What happens at the day's first instant comes before people are sent; if nothing does, they are sent now.
  nextSlot(day);
  return day;
}

const MAX_PRESENT = 2_000_000;

/**
 * A clock that stands still for so many events will never move again: some stage works in no time without an end. What
 * piles up meanwhile takes some 200 MB.
 */
const MAX_EVENTS_AT_ONCE = 1_000_000;

/**
 * Takes events in order up to and including `until` seconds; "stuck" when heads are left but no event is pending, or when
 * the clock no longer moves.
 */
export function advance(day: DayState, until: number): "running" | "finished" | "stuck" {
  const { calendar, line, options } = day;
  const { mostEvents = Infinity, mostPresent = MAX_PRESENT } = options;
  const { kind, owner } = line.slots;
  let atOnce = 0;
  while (!day.finished) {
    const slot = nextSlot(day);
    const time = calendar.times[slot]!;
    if (time > day.now) day.killStops?.look();
    if (time > until) {
      if (time === Infinity) return "stuck";
      day.now = until;
      return "running";
    }
    atOnce = time > day.now ? 0 : atOnce + 1;
    if (atOnce > MAX_EVENTS_AT_ONCE) return "stuck";
    if (day.events >= mostEvents) throw tooLong(day, mostEvents);
    if (day.pool.live > mostPresent) throw tooFull(day, mostPresent);
    day.now = time;
    day.events++;
    day.path?.fire(day, slot, kind[slot]!, owner[slot]!);
    dispatch(day, slot, kind[slot]!, owner[slot]!);
    if (day.mustSettle) settle(day);
    if (day.stunned !== null) noteEvent(day, day.stunned);
    if (options.check) checkConservation(day);
  }
  return "finished";
}

/** The slot of the next event. Before the clock goes on, people are sent and held stunners look, until that makes nothing more happen now. */
function nextSlot(day: DayState): number {
  const { calendar } = day;
  let slot = calendar.next();
  const { stunned } = day;
  while ((day.unsent || stunned?.looks === true) && calendar.times[slot]! > day.now) {
    if (day.unsent) sendPeople(day);
    else look(day, stunned!);
    if (day.mustSettle) settle(day);
    if (day.options.check) checkConservation(day);
    slot = calendar.next();
  }
  return slot;
}

function tooFull({ stageAt, stages, now }: DayState, mostPresent: number): PlantTooFull {
  const fullest = stageAt.reduce((most, stage) => (stage.occupancy > most.occupancy ? stage : most));
  return new PlantTooFull(mostPresent, now / 3600, stages.names[fullest.index]!);
}

const LOOKED_AT = 1000;

/** What a day that took too many events is busy with is seen from the next ones. */
function tooLong(day: DayState, mostEvents: number): DayTooLong {
  const { calendar, line } = day;
  const hours = day.now / 3600;
  const slots: number[] = [];
  while (slots.length < LOOKED_AT && !day.finished) {
    const slot = nextSlot(day);
    if (calendar.times[slot] === Infinity) break;
    slots.push(slot);
    day.now = calendar.times[slot]!;
    dispatch(day, slot, line.slots.kind[slot]!, line.slots.owner[slot]!);
    if (day.mustSettle) settle(day);
    if (day.stunned !== null) noteEvent(day, day.stunned);
  }
  return new DayTooLong(mostEvents, hours, busiestStage(line, slots));
}

function dispatch(day: DayState, slot: number, kind: number, owner: number): void {
  if (kind === SLOT_POSITION) turnPosition(day, slot, day.positionAt[owner]!);
  else if (kind === SLOT_DWELL) endDwell(day, day.positionAt[owner]!);
  else if (kind === SLOT_TRAVEL) endTravel(day, day.stageAt[owner]!);
  else if (kind === SLOT_BREAKDOWN) turnBreakdown(day, day.breakdownAt[owner]!);
  else if (kind === SLOT_CHAIN) endChainStep(day, day.chainAt[owner]!);
  else if (kind === SLOT_VESSEL) turnVessel(day, day.vesselAt[owner]!);
  else if (kind === SLOT_RETURN) turnReturn(day);
  else if (kind === SLOT_CALENDAR) turnCalendar(day);
  else if (kind === SLOT_LOAD) loadArrives(day);
  else if (kind === SLOT_HOLD) turnHold(day);
  else if (kind === SLOT_LATE) turnLate(day);
  else if (kind === SLOT_HELP) turnHelp(day);
  else headArrives(day);
}

/** The slot is withdrawn afterwards unless the position has something new to announce: that saves one walk up the tree. */
function turnPosition(day: DayState, slot: number, position: PositionState): void {
  const announced = position.announces;
  if (announced === WORK_ENDS) endWork(day, position);
  else if (announced === POSITION_BREAKS) breakPosition(day, position);
  else repairPosition(day, position);
  if (position.announces === NOTHING) day.calendar.schedule(slot, Infinity);
}

/** A vessel is empty: who emptied it is free, and the stages it stopped go on. */
function turnVessel(day: DayState, vessel: VesselState): void {
  emptyVessel(day, vessel);
  for (const stage of vessel.feeders) callFeeder(day, stage);
  releaseFromJob(day, emptyingJob(day, vessel));
}

/** A stage that the full vessel stopped looks again. */
function callFeeder(day: DayState, stage: StageState): void {
  if (stage.kind === DWELL) drainDwell(day, stage);
  else if (stage.kind === CHAIN) wakeChain(day, stage.chain!);
  else startWaiting(day, stage);
}

/**
 * After an event: stages behind gates that opened look again, planned stops that waited for an empty stretch begin, and
 * chains whose hindrance is gone move, until nothing opens any more. All at the same instant.
 */
function settle(day: DayState): void {
  const { gates } = day.line;
  while (day.mustSettle) {
    day.mustSettle = false;
    for (let gate = 0; gate < gates.count; gate++) {
      if (!day.gateOpened[gate]) continue;
      day.gateOpened[gate] = 0;
      if (gate === gates.safeStop && day.headsInGate[gate]!.heads === 0 && day.heldRows.length > 0) applyHeldRows(day);
      startWaiting(day, day.stageAt[gates.from[gate]!]!);
    }
    for (const chain of day.chainAt) {
      if (!chain.looksAgain) continue;
      chain.looksAgain = false;
      tryMoveChain(day, chain);
    }
  }
}
