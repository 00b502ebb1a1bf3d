import {
  type CompiledLine,
  FLEET_BACK,
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
  SLOT_STREAM,
  SLOT_TRAVEL,
  SLOT_VESSEL,
} from "../../line/index.ts";
import type { BreakdownState } from "../state/breakdownState.ts";
import type { ChainState } from "../state/chainState.ts";
import { BLOCKED, DOWN, NO_CREW, NONE, ON_BREAK, POSITION_REPAIRED, STARVED } from "../state/codes.ts";
import type { CrewState } from "../state/crewState.ts";
import type { DayUnderWay } from "../state/dayUnderWay.ts";
import type { Item } from "../state/item.ts";
import type { PositionState } from "../state/positionState.ts";
import { rowsOf } from "../state/rowsOf.ts";
import type { StageState } from "../state/stageState.ts";
import { ABSENT, FEW, lackOf } from "./lackOfPeople.ts";
import { type PathCells, pathCells } from "./pathCells.ts";
import { PathRows } from "./pathRows.ts";

/**
 * Why things happened when they did: for each event the chain of what released what, back to the day's start, kept as the
 * seconds owed to each cause at each stage. They add up to the time of the event, so those of the last event are an exact
 * split of the day.
 *
 * Whatever starts does so in an event, and that event released it: the start takes over the event's row, and the time to
 * its own end is owed to it. Three exceptions keep the split meaningful. Work that is interrupted keeps its row, and the
 * interruption is owed to its cause. What starts when a planned stop or an idle machine's repair ends takes over the row
 * of the moment at which all else was ready, and the wait is owed to the stop: else the hours before a break would not
 * count. A head that rides on a chain goes on from where it was hung, or from the moment at which the chain last stood
 * and was set free.
 *
 * Memory: one row for each slot, stage and item present, whatever the length of the day.
 */
export class BindingPath {
  readonly cells: PathCells;
  private readonly line: CompiledLine;
  private readonly rows: PathRows;
  private readonly goesOn: boolean;
  /** Loads of the day itself; those behind them were there, or due, before. */
  private readonly ownLoads: number;
  /** Row of the event under way; it stands for the time of the event. */
  private at: number;
  /** What the event's last stretch of time was owed to, how long it was, and at which stage: a start may tell it more precisely. */
  private lastCell = NONE;
  private lastSeconds = 0;
  private lastStage = NONE;
  /** The event is of the plan's calendar; ends this breakdown; is a step of this chain. */
  private planned = false;
  private unit = NONE;
  private chain = NONE;

  // By stage.
  private readonly readyRow: number;
  private readonly isReady: Uint8Array;
  /** Positions that can stand idle for a repair or a planned stop. */
  private readonly mayStand: Uint8Array;
  /** Why idle positions idle. */
  private readonly why: Int8Array;
  /** The next event of a dwell stage is its first head's leaving, whose dwell was over before. */
  private readonly leavesLate: Uint8Array;
  /** Since when they idle for a planned stop. */
  private readonly awaySince: Float64Array;
  private readonly lastTraveller: Int32Array;
  /** By chain: since when what it carries is bound by the chain's own row. */
  private readonly setFree: Float64Array;

  /**
   * By stage, then by crew: what the event was like in which the stage called for people, or the crew's people came free.
   * They are sent when the instant is over, and what starts then was released by that event.
   */
  private readonly callRow: number;
  private readonly hasCalled: Uint8Array;
  private readonly callCell: Int32Array;
  private readonly callSeconds: Float64Array;
  private readonly callStage: Int32Array;
  private readonly callPlanned: Uint8Array;
  private readonly callUnit: Int32Array;
  /** Behind the crews: what the stunner that is held back was called by. */
  private readonly holdCaller: number;
  /** By crew: its people ended some work at this instant. */
  private readonly hasEnded: Uint8Array;
  /** By stage: nothing but people was missing when it called. */
  private readonly lacksPeople: Uint8Array;
  private readonly stages: number;

  private readonly scratch: number;
  private readonly absolute: number;
  private readonly endRow: number;
  private readonly workRow: number;
  private readonly warmUpRow: number;
  private workEnded = false;

  /** `goesOn`: something may be there when the day begins, left by the day before or told by the plan. */
  constructor(line: CompiledLine, goesOn: boolean) {
    const { slots, stages, chains, crews, supply } = line;
    const callers = stages.count + crews.count + 1;
    this.line = line;
    this.cells = pathCells(line, goesOn);
    this.goesOn = goesOn;
    this.ownLoads = supply.kind === "loads" ? supply.loads.length : 0;
    this.readyRow = slots.count;
    this.scratch = slots.count + stages.count;
    this.absolute = this.scratch + 1;
    this.endRow = this.scratch + 2;
    this.workRow = this.scratch + 3;
    this.warmUpRow = this.scratch + 4;
    this.callRow = this.scratch + 5;
    this.rows = new PathRows(this.cells.cells.length, this.callRow + callers);
    this.hasCalled = new Uint8Array(callers);
    this.callCell = new Int32Array(callers);
    this.callSeconds = new Float64Array(callers);
    this.callStage = new Int32Array(callers);
    this.callPlanned = new Uint8Array(callers);
    this.callUnit = new Int32Array(callers);
    this.holdCaller = callers - 1;
    this.hasEnded = new Uint8Array(crews.count);
    this.lacksPeople = new Uint8Array(stages.count);
    this.stages = stages.count;
    this.at = this.absolute;
    this.isReady = new Uint8Array(stages.count);
    this.mayStand = new Uint8Array(stages.count).fill(line.calendar.count > 0 ? 1 : 0);
    for (const stage of [...line.breakdowns.stage, ...line.breakdowns.stopped])
      if (stage >= 0) this.mayStand[stage] = 1;
    this.why = new Int8Array(stages.count).fill(STARVED);
    this.leavesLate = new Uint8Array(stages.count);
    this.awaySince = new Float64Array(stages.count);
    this.lastTraveller = new Int32Array(stages.count).fill(NONE);
    this.setFree = new Float64Array(chains.count);
  }

  /** Called before the event's consequences: its row is brought up to its time. */
  fire(day: DayUnderWay, slot: number, kind: number, owner: number): void {
    this.planned = false;
    this.unit = NONE;
    this.chain = NONE;
    this.lastStage = NONE;
    if (kind === SLOT_POSITION) this.firePosition(day, day.positionAt[owner]!);
    else if (kind === SLOT_DWELL) this.fireDwell(day, day.positionAt[owner]!);
    else if (kind === SLOT_TRAVEL) {
      this.goOn(this.rows.ofItem(day.stageAt[owner]!.travelling.first!.row), this.cells.travel[owner]!, owner, day.now);
    } else if (kind === SLOT_BREAKDOWN) this.fireBreakdown(day, slot, owner);
    else if (kind === SLOT_CHAIN) {
      this.chain = owner;
      const stage = this.line.chains.stage[owner]!;
      this.goOn(slot, this.cells.own[stage]!, stage, day.now);
    } else if (kind === SLOT_VESSEL) this.goOn(slot, this.cells.emptying[owner]!, NONE, day.now);
    else if (kind === SLOT_HOLD) this.goOn(slot, this.cells.hold[this.line.stunned!.from]!, NONE, day.now);
    else if (kind === SLOT_HELP) this.goOn(slot, this.cells.help, NONE, day.now);
    else if (kind === SLOT_STREAM) this.goOn(slot, this.cells.arrivals, NONE, day.now);
    else this.fireAbsolute(day, kind);
  }

  private firePosition(day: DayUnderWay, position: PositionState): void {
    const { announces, slot, stage, ownBreakdown } = position;
    if (announces !== POSITION_REPAIRED) {
      this.goOn(slot, this.workCell(day, position), stage.index, day.now);
      return;
    }
    this.unit = ownBreakdown!.index;
    this.goOn(slot, this.cells.repair[this.unit]!, stage.index, day.now);
  }

  /** The stage's own time with that head or crate: told apart where that was there when the day began. */
  private ownCell({ keptHeads }: DayUnderWay, { index, takesHeads }: StageState, item: Item | null): number {
    const wasThere =
      this.goesOn && item !== null && (item.load >= this.ownLoads || (takesHeads && item.number < keptHeads));
    return wasThere ? this.cells.leftOver[index]! : this.cells.own[index]!;
  }

  /** A head's dwell is over now; or the first one leaves, whose dwell was over while it stood behind another one. */
  private fireDwell(day: DayUnderWay, { stage, slot }: PositionState): void {
    const { index, ends } = stage;
    const isLate = this.leavesLate[index] === 1;
    this.leavesLate[index] = 0;
    const row = isLate ? slot : this.rows.ofItem(ends.first.row);
    this.goOn(row, this.ownCell(day, stage, isLate ? null : ends.first), index, day.now);
  }

  private fireBreakdown(day: DayUnderWay, slot: number, unit: number): void {
    if (day.breakdownAt[unit]!.isDown) this.unit = unit;
    this.goOn(slot, this.cells.repair[unit]!, this.line.breakdowns.stage[unit]!, day.now);
  }

  /** What the clock brings: a load, the calendar, crews and crates that come back. */
  private fireAbsolute(day: DayUnderWay, kind: number): void {
    this.at = this.absolute;
    this.rows.clear(this.absolute);
    this.lastSeconds = 0;
    if (kind === SLOT_LOAD) {
      const { index } = day.loadsDue[day.loadRow]!;
      const cell = index < this.ownLoads ? this.cells.load[index]! : this.cells.leftOverLoad;
      this.rows.accrue(this.absolute, cell, day.now);
      return;
    }
    if (kind === SLOT_LATE) {
      const { bound, boundSince } = day.stunned!.waiting[0]!;
      this.rows.write(this.absolute, bound!, boundSince);
      this.rows.accrue(this.absolute, this.cells.help, day.now);
      return;
    }
    const back = kind === SLOT_RETURN ? day.returns[0]! : null;
    if (back?.action === FLEET_BACK && back.bound) {
      this.rows.write(this.absolute, back.bound, back.boundSince!);
      this.rows.accrue(this.absolute, this.cells.lorryAway, day.now);
      return;
    }
    this.planned = kind === SLOT_CALENDAR || kind === SLOT_RETURN;
    this.rows.accrue(this.absolute, this.cells.calendar, day.now);
  }

  private goOn(row: number, cell: number, stage: number, now: number): void {
    this.at = row;
    this.lastCell = cell;
    this.lastStage = stage;
    this.lastSeconds = this.rows.accrue(row, cell, now);
  }

  /** The stage calls for people. The first call of an instant counts at which nothing but people was missing. */
  calls(stage: number, lacksPeople: boolean): void {
    if (this.hasCalled[stage] && this.lacksPeople[stage]) return;
    this.lacksPeople[stage] = lacksPeople ? 1 : 0;
    this.noteCall(stage);
  }

  /** People of the crew are free. */
  frees(crew: number): void {
    this.noteCall(this.stages + crew);
  }

  private noteCall(caller: number): void {
    this.hasCalled[caller] = 1;
    this.rows.copy(this.at, this.callRow + caller);
    this.callCell[caller] = this.lastCell;
    this.callSeconds[caller] = this.lastSeconds;
    this.callStage[caller] = this.lastStage;
    this.callPlanned[caller] = this.planned ? 1 : 0;
    this.callUnit[caller] = this.unit;
  }

  /** Back to the event in which the stage (or crew, behind the stages) called, if it did at this instant. */
  recall(caller: number): void {
    if (!this.hasCalled[caller]) return;
    this.at = this.callRow + caller;
    this.lastCell = this.callCell[caller]!;
    this.lastSeconds = this.callSeconds[caller]!;
    this.lastStage = this.callStage[caller]!;
    this.planned = this.callPlanned[caller] === 1;
    this.unit = this.callUnit[caller]!;
    this.chain = NONE;
  }

  /** People of the crew go to the stage: they released what starts there if it waited for people before, else its own call did. */
  sends(stage: number, crew: number): void {
    const waited = this.why[stage] === NO_CREW || this.why[stage] === ON_BREAK;
    const caller = this.stages + crew;
    this.recall((waited && this.hasCalled[caller]) || !this.hasCalled[stage] ? caller : stage);
  }

  sendsToJob(crew: number): void {
    this.recall(this.stages + crew);
  }

  /** People of the crew have ended some work. */
  endsWork(crew: number): void {
    this.hasEnded[crew] = 1;
  }

  everybodyIsSent(crews: readonly CrewState[]): void {
    for (const crew of crews) if (this.hasEnded[crew.index]) this.peopleFreed(crew);
    this.hasEnded.fill(0);
    this.hasCalled.fill(0, 0, this.holdCaller);
  }

  /** Something happened that a stunner which is held back looks at when the instant is over; the last call counts. */
  callsHold(): void {
    this.noteCall(this.holdCaller);
  }

  /** It looks. */
  recallHold(): void {
    this.recall(this.holdCaller);
    this.hasCalled[this.holdCaller] = 0;
  }

  /** It looks again after a time, if nothing happens before. */
  holdWaits(): void {
    this.rows.copy(this.at, this.line.slots.hold);
  }

  /** Somebody is there for a stunned head that waited too long. */
  helpBegins(): void {
    this.take(this.line.slots.help, NONE);
  }

  /** A position of the stage starts work on an item. `walking`: seconds that its people walk first. */
  start(day: DayUnderWay, position: PositionState, walking: number): void {
    const row = position.slot;
    const stage = position.stage.index;
    const wait = this.waitedFor(stage);
    if (wait < 0) this.take(row, this.via(position.stage));
    else {
      if (this.isReady[stage]) this.rows.copy(this.readyRow + stage, row);
      else this.rows.clear(row);
      this.rows.accrue(row, wait, day.now);
    }
    if (walking > 0) this.rows.accrue(row, this.cells.walking[stage]!, day.now + walking);
  }

  /** The planned stop or repair that kept a stage waiting which was ready otherwise, or -1. */
  private waitedFor(stage: number): number {
    if (this.planned) return this.cells.plannedStop[stage]!;
    if (this.unit === NONE || !this.isReady[stage]) return NONE;
    return this.isStoppedBy(this.unit, stage) ? this.cells.repair[this.unit]! : NONE;
  }

  private isStoppedBy(unit: number, stage: number): boolean {
    const { breakdowns } = this.line;
    if (unit < breakdowns.sharedFrom) return breakdowns.stage[unit] === stage;
    return rowsOf(breakdowns.stopped, breakdowns.stoppedFrom, unit - breakdowns.sharedFrom).includes(stage);
  }

  /**
   * What the event's last seconds meant to the stage that was waiting, or -1 where they were just its own or the head's. A
   * stage's own time alone is told so: seconds of a way or a repair keep their name, for its mean is what they grow with.
   */
  private via(waiting: StageState): number {
    const stage = waiting.index;
    const from = this.ownWorkOf();
    if (from === NONE) return NONE;
    if (this.why[stage] === NO_CREW) return this.lackCell(waiting, from);
    if (this.why[stage] === BLOCKED) return this.cells.hold[from]!;
    return from > stage ? this.cells.place[from]! : NONE;
  }

  /** Why the head that starts at `waiting` had no people until those at `from` were free. */
  private lackCell(waiting: StageState, from: number): number {
    const { people, absent, fewPeople } = this.cells;
    const lack = lackOf(waiting, from);
    if (lack === ABSENT && absent[from]! >= 0) return absent[from]!;
    return lack === FEW ? fewPeople[from]! : people[from]!;
  }

  /** The stage whose own time the event's last seconds were; -1 where they were something else. */
  private ownWorkOf(): number {
    const from = this.lastStage;
    return from !== NONE && this.lastCell === this.cells.own[from] ? from : NONE;
  }

  /** The row takes over that of the event, its last seconds owed to `via` if that is a cell. */
  private take(row: number, via: number): void {
    const { rows } = this;
    const tells = via >= 0 && this.lastSeconds > 0;
    if (row === this.at && tells) this.setEventAside();
    rows.copy(this.at, row);
    if (tells) rows.move(row, this.lastCell, via, this.lastSeconds);
  }

  /** The row that the event stands on is about to change: what follows goes on from a copy. */
  private setEventAside(): void {
    this.rows.copy(this.at, this.scratch);
    this.at = this.scratch;
  }

  /** Idle positions of the stage wait for this reason; with work there, all but the reason is ready now. */
  explain(stage: number, reason: number, hasWork: boolean): void {
    if (reason === ON_BREAK && this.why[stage] !== ON_BREAK) this.awaySince[stage] = this.rows.since(this.at);
    this.why[stage] = reason;
    if (!hasWork) this.isReady[stage] = 0;
    else this.noteReady(stage);
  }

  private noteReady(stage: number): void {
    if (this.isReady[stage]) return;
    this.isReady[stage] = 1;
    this.rows.copy(this.at, this.readyRow + stage);
  }

  /** A position has become free: what the stage waits for is to be told anew. */
  freed(stage: number): void {
    this.why[stage] = STARVED;
    this.isReady[stage] = 0;
  }

  /**
   * People of the crew have ended some work, and heads at other idle positions still wait for them: until now it was that
   * work which kept them waiting. What a break that begins then makes them wait longer is counted from here.
   */
  private peopleFreed({ index: crew, stations }: CrewState): void {
    this.recall(this.stages + crew);
    for (const { index } of stations) {
      if (this.isReady[index] && this.waitedForWork(index)) this.rows.copy(this.at, this.readyRow + index);
    }
  }

  /** On a break only the first to end counts: from then on a position was free for the next head. */
  private waitedForWork(stage: number): boolean {
    if (this.why[stage] === NO_CREW) return true;
    return this.why[stage] === ON_BREAK && this.rows.since(this.readyRow + stage) < this.awaySince[stage]!;
  }

  /** Work waits at a stage without a free position; one that stands idle for a repair would take it. */
  waits({ index, positions }: StageState): void {
    if (this.mayStand[index] === 0) return;
    if (positions.some(({ item, downCauses }) => item === null && downCauses > 0)) this.noteReady(index);
  }

  /** Work in hand is interrupted by something that stops more than this position. */
  suspend(day: DayUnderWay, position: PositionState): void {
    this.rows.accrue(position.slot, this.workCell(day, position), day.now);
  }

  /** Walking is booked ahead: when work is interrupted before people are there, what they did not walk is taken back. */
  private workCell(day: DayUnderWay, { slot, stage, item }: PositionState): number {
    return this.rows.since(slot) > day.now ? this.cells.walking[stage.index]! : this.ownCell(day, stage, item);
  }

  /** Interrupted work goes on after a repair. */
  resume(day: DayUnderWay, { slot }: PositionState): void {
    this.rows.accrue(slot, this.cells.repair[this.unit]!, day.now);
  }

  /** What has a slot of its own breaks: because of the work of a position, or the moving of a chain, if there was any. */
  breakdownStrikes({ slot, chains }: BreakdownState, working: readonly PositionState[]): void {
    const first = working[0] ?? chains[0];
    if (first === undefined) return;
    this.rows.copy(first.slot, slot);
    this.lastSeconds = 0;
  }

  /** Somebody is there to repair; the time until now was spent waiting for that. */
  repairBegins(day: DayUnderWay, { index, slot, stages, positions }: BreakdownState): void {
    const repairer = this.cells.repairer[index]!;
    if (repairer < 0) return;
    if (slot >= 0) this.rows.accrue(slot, repairer, day.now);
    for (const position of positions) {
      const isInterrupted = position.item !== null && !position.done && position.state === DOWN;
      if (isInterrupted) this.rows.accrue(position.slot, repairer, day.now);
    }
    const chains = new Set(stages.map(({ chain }) => chain));
    for (const chain of chains) if (chain !== null && !chain.isDue) this.chainAccrues(chain, repairer, day.now);
  }

  emptyingBegins(vessel: number): void {
    this.take(this.line.vessels.slot[vessel]!, NONE);
  }

  /** An item begins its way to the next stage; `behind`: it comes no earlier than the one before it. */
  travels(day: DayUnderWay, stage: number, item: Item, behind: boolean): void {
    const row = this.rows.ofItem(item.row);
    const before = this.lastTraveller[stage]!;
    if (behind && before !== NONE) {
      // Out of a dwell the head's own row is the event's, which others may still take over.
      if (row === this.at) this.setEventAside();
      this.rows.copy(this.rows.ofItem(before), row);
    } else this.take(row, this.via(day.stageAt[stage]!));
    this.lastTraveller[stage] = item.row;
  }

  /** A head begins to dwell. */
  dwells(stage: number, item: Item): void {
    const from = this.ownWorkOf();
    this.take(this.rows.ofItem(item.row), from > stage ? this.cells.place[from]! : NONE);
  }

  /** A head left a dwell stage, and the one behind it, whose dwell is over already, leaves next. */
  leavesNext(stage: number): void {
    this.leavesLate[stage] = 1;
    this.take(this.line.slots.ofPosition[this.line.stages.positionFrom[stage]!]!, NONE);
  }

  /** The stage closes for the day: only times end there from now on. */
  closes(stage: number): void {
    this.leavesLate[stage] = 0;
  }

  /** A head is hung on a chain. */
  hung(day: DayUnderWay, item: Item): void {
    item.entered = day.now;
    this.take(this.rows.ofItem(item.row), NONE);
  }

  /** What follows concerns this head on the chain that makes its step now. */
  turnTo(day: DayUnderWay, { index, slot, stage }: ChainState, item: Item | null): void {
    if (this.chain !== index) return;
    const bound = item === null || item.entered < this.setFree[index]!;
    const cell = bound ? this.cells.own[stage.index]! : this.ownCell(day, stage, item);
    this.goOn(bound ? slot : this.rows.ofItem(item.row), cell, stage.index, day.now);
  }

  /** A chain that stood with its step due is set free by something else than its own pace: `unfinished` or for want of a place. */
  moves(day: DayUnderWay, chain: ChainState, unfinished: boolean): void {
    if (this.chain === chain.index) return;
    if (this.planned) {
      this.movesAfterStop(chain, day.now);
      return;
    }
    const from = this.unit === NONE ? this.ownWorkOf() : NONE;
    const via = from === NONE ? NONE : unfinished ? this.cells.hold[from]! : this.cells.place[from]!;
    this.take(chain.slot, via);
    this.setFree[chain.index] = day.now;
  }

  /** The planned stop lengthened the way of what hangs on the chain; from here on the chain goes by its own pace. */
  private movesAfterStop(chain: ChainState, now: number): void {
    this.chainAccrues(chain, this.cells.plannedStop[chain.stage.index]!, now);
    this.planned = false;
    this.chain = chain.index;
    this.at = chain.slot;
    this.lastSeconds = 0;
  }

  /** The step under way is interrupted. */
  chainStops(day: DayUnderWay, chain: ChainState): void {
    this.chainAccrues(chain, this.cells.own[chain.stage.index]!, day.now);
  }

  /** It goes on. */
  chainGoesOn(day: DayUnderWay, chain: ChainState): void {
    const stop = this.cells.plannedStop[chain.stage.index]!;
    this.chainAccrues(chain, this.planned || this.unit === NONE ? stop : this.cells.repair[this.unit]!, day.now);
  }

  private chainAccrues({ slot, shackles }: ChainState, cell: number, now: number): void {
    this.rows.accrue(slot, cell, now);
    for (const item of shackles) if (item !== null) this.rows.accrue(this.rows.ofItem(item.row), cell, now);
  }

  /** The event's row, for something that comes back much later. */
  snapshot(): Float64Array {
    return this.rows.read(this.at);
  }

  dayEnds(): void {
    this.rows.copy(this.at, this.endRow);
  }

  /** A head's work ended; the last call counts. */
  workEnds(): void {
    this.workEnded = true;
    this.rows.copy(this.at, this.workRow);
  }

  warmUpEnds(): void {
    this.rows.copy(this.at, this.warmUpRow);
  }

  /** Seconds by cell of the last event, less those up to the end of the warm-up. */
  end(): Float64Array {
    return this.withoutWarmUp(this.endRow);
  }

  /** The same of the last work; null when the day left no trace of which that was. */
  endOfWork(): Float64Array | null {
    return this.workEnded ? this.withoutWarmUp(this.workRow) : null;
  }

  private withoutWarmUp(row: number): Float64Array {
    const before = this.rows.read(this.warmUpRow);
    return this.rows.read(row).map((seconds, cell) => seconds - before[cell]!);
  }
}
