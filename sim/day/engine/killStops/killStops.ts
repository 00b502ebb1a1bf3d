import { MOMENTS } from "../../../asked/plan/plan.ts";
import { BLED, type KillLineColumns, STUCK, STUNNED } from "../../line/index.ts";
import { type KillStop, type KillStopReason, type KillStopsRecord, MAX_KILL_STOPS } from "../dayRecord.ts";
import { NONE } from "../state/codes.ts";
import type { DayState } from "../state/dayState.ts";
import type { Item } from "../state/item.ts";
import type { KillStopWatch } from "../state/killStopWatch.ts";
import type { StageState } from "../state/stageState.ts";
import { isExpecting, mayStand, whyStanding } from "./standing.ts";

/** A stand that lasts less is the pace of the work and no stop, seconds. Ours; common practice knows no figure. */
export const MIN_STOP_SECONDS = 10;

/** A head on the kill line. */
interface OnKillLine {
  /** Stunned at, seconds; NaN once it is stuck. */
  stunnedAt: number;
  /** The first stop, by number, that was not over by then. */
  firstStop: number;
}

/**
 * Writes down the stops of the kill line as a day runs: looks at its steps when all that happens at an instant is over, and
 * is told when heads are stunned, stuck and through bleeding. Reads, never writes, the day. Its memory grows with the heads
 * on the kill line and with MAX_KILL_STOPS, not with the day.
 */
export class KillStops implements KillStopWatch {
  private readonly day: DayState;
  private readonly line: KillLineColumns;
  private readonly steps: readonly StageState[];
  private readonly heads = new Map<number, OnKillLine>();
  private stunned = 0;
  private bleeding = 0;
  /** Of the stunned heads: those that were stunned at this instant. */
  private fresh = 0;
  private open: KillStop | null = null;
  /** Why the line stands at this instant. */
  private readonly reasons: KillStopReason[] = [];
  /** Sums so far, and the stops that are over. */
  private sums = emptySums();

  constructor(line: KillLineColumns, day: DayState) {
    this.line = line;
    this.day = day;
    this.steps = Array.from(line.steps, (stage) => day.stageAt[stage]!);
  }

  look(): void {
    const { day, steps, reasons } = this;
    reasons.length = 0;
    for (let row = 0; row < steps.length; row++) {
      const reason = mayStand(steps[row]!) ? whyStanding(day, steps[row]!, steps) : null;
      if (reason !== null) reasons.push(reason);
    }
    if (reasons.length > 0 || this.open !== null) this.judge();
    this.fresh = 0;
  }

  private judge(): void {
    const { day, steps, open, reasons } = this;
    const isOver = !isExpecting(day, steps[0]!, this.line.last);
    if (isOver || reasons.length === 0) {
      if (open === null) return;
      this.close(day.now, !isOver);
      // Stunned when it was just over.
      for (const head of this.heads.values()) if (head.stunnedAt === day.now) head.firstStop = this.sums.count;
    } else if (open === null) this.begin(day.now, reasons);
    else this.goOn(open, reasons);
  }

  /** A head passes a point that has a mark in the line, or another one. */
  pass(item: Item, stage: number, moment: number, now: number): void {
    const mark = this.line.marks[stage * MOMENTS.length + moment];
    // Sent on unworked, it is neither stunned nor stuck here.
    const isWorked = item.sendTo === NONE;
    if (mark === STUNNED && isWorked) this.stun(item.number, now);
    else if (mark === STUCK && isWorked) this.stick(item.number, now);
    else if (mark === BLED) this.leave(item.number, now);
  }

  /** A head is through, or leaves the line before that. */
  leave(head: number, now: number): void {
    const found = this.heads.get(head);
    if (found === undefined) return;
    this.heads.delete(head);
    if (Number.isNaN(found.stunnedAt)) this.bleeding--;
    else {
      this.stunned--;
      if (found.stunnedAt < now) this.tellWait(found, now, 1);
      else this.fresh--;
    }
  }

  /** The warm-up is over; the heads that are there stay. */
  forget(now: number): void {
    this.sums = emptySums();
    for (const head of this.heads.values()) head.firstStop = 0;
    if (this.open === null) return;
    const { reasons } = this.open;
    this.open = null;
    this.begin(now, reasons);
  }

  /** Closes the record at the day's end. */
  record(): KillStopsRecord {
    const { day } = this;
    this.look();
    for (const head of this.heads.values()) if (!Number.isNaN(head.stunnedAt)) this.tellWait(head, day.now, 1);
    this.heads.clear();
    if (this.open !== null) this.close(day.now, false);
    const { stunning, sticking, bleeding, steps } = this.line.names;
    return { stunning, sticking, bleeding, steps, leastSeconds: MIN_STOP_SECONDS, ...this.sums };
  }

  private begin(now: number, reasons: readonly KillStopReason[]): void {
    const { stunned, bleeding } = this;
    this.open = {
      fromSeconds: now,
      toSeconds: now,
      reasons: [],
      ...{ stunned, stunnedMost: stunned, bleeding, bleedingMost: bleeding },
      ...{ caught: stunned, longestWaitSeconds: 0, neverStuck: 0, startedAgain: true },
    };
    addReasons(this.open, reasons);
  }

  private goOn(open: KillStop, reasons: readonly KillStopReason[]): void {
    addReasons(open, reasons);
    open.caught += this.fresh;
    open.stunnedMost = Math.max(open.stunnedMost, this.stunned);
    open.bleedingMost = Math.max(open.bleedingMost, this.bleeding);
  }

  private close(now: number, startedAgain: boolean): void {
    const { sums } = this;
    const stop = { ...this.open!, toSeconds: now, startedAgain };
    this.open = null;
    const seconds = now - stop.fromSeconds;
    if (seconds < MIN_STOP_SECONDS) {
      sums.shorter.count++;
      sums.shorter.seconds += seconds;
      return;
    }
    addStop(sums, seconds);
    if (stop.reasons[0]!.cause !== "planned break") addStop(sums.unplanned, seconds);
    sums.caught += stop.caught;
    sums.neverStuck += stop.neverStuck;
    sums.worstWaitSeconds = Math.max(sums.worstWaitSeconds, stop.longestWaitSeconds);
    if (sums.stops.length < MAX_KILL_STOPS) sums.stops.push(stop);
    else sums.leftOut++;
  }

  /** Stunned again it is the same head, and waits from the first time on. */
  private stun(head: number, now: number): void {
    if (this.heads.has(head)) return;
    this.heads.set(head, { stunnedAt: now, firstStop: this.sums.count });
    this.stunned++;
    this.fresh++;
  }

  private stick(head: number, now: number): void {
    const found = this.heads.get(head);
    if (found === undefined || Number.isNaN(found.stunnedAt)) return;
    if (found.stunnedAt < now) this.tellWait(found, now, 0);
    else this.fresh--;
    found.stunnedAt = Number.NaN;
    this.stunned--;
    this.bleeding++;
  }

  /** The head waits no longer: every stop that it was caught in learns how long it did. `neverStuck`: 1, or 0 for a head that is stuck now. */
  private tellWait({ stunnedAt, firstStop }: OnKillLine, now: number, neverStuck: number): void {
    const { sums, open } = this;
    const seconds = now - stunnedAt;
    for (let stop = firstStop; stop < sums.stops.length; stop++) note(sums.stops[stop]!, seconds, neverStuck);
    if (open !== null) note(open, seconds, neverStuck);
    if (firstStop >= sums.count) return;
    sums.worstWaitSeconds = Math.max(sums.worstWaitSeconds, seconds);
    sums.neverStuck += neverStuck * (sums.count - firstStop);
  }
}

function addStop(sums: KillStopsRecord["unplanned"], seconds: number): void {
  sums.count++;
  sums.seconds += seconds;
  sums.longestSeconds = Math.max(sums.longestSeconds, seconds);
}

function note(stop: KillStop, seconds: number, neverStuck: number): void {
  stop.longestWaitSeconds = Math.max(stop.longestWaitSeconds, seconds);
  stop.neverStuck += neverStuck;
}

function addReasons(stop: KillStop, reasons: readonly KillStopReason[]): void {
  for (const each of reasons) {
    if (
      !stop.reasons.some(({ cause, where, what }) => cause === each.cause && where === each.where && what === each.what)
    )
      stop.reasons.push(each);
  }
}

function emptySums(): Omit<KillStopsRecord, "stunning" | "sticking" | "bleeding" | "steps" | "leastSeconds"> {
  return {
    ...{ shorter: { count: 0, seconds: 0 }, count: 0, seconds: 0, longestSeconds: 0 },
    unplanned: { count: 0, seconds: 0, longestSeconds: 0 },
    ...{ caught: 0, worstWaitSeconds: 0, neverStuck: 0, stops: [], leftOut: 0 },
  };
}
