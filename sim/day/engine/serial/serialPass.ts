import { NO_LIMIT } from "../../line/index.ts";
import { BLOCKED, type DayState, STARVED, WORKING } from "../state/dayState.ts";
import type { PositionState } from "../state/positionState.ts";
import { ComingsAndGoings } from "./comingsAndGoings.ts";

/** Heads that are taken through the line before the books are kept. */
export const BLOCK = 64;

/** How many heads of a block come to a stage, start there, are done there and leave it. */
interface Passing {
  come: number;
  start: number;
  end: number;
  leave: number;
}

/** Stages first to last, and who is in them. */
interface SectionBook {
  first: number;
  last: number;
  book: ComingsAndGoings;
}

/**
 * Heads of a serial line in the order in which they are hung, each taken through all its machines at one go:
 *
 *   start = max(it joins, the head before left)   end = start + work   leaves = max(end, a place behind is free)
 *
 * where a stage with n places has one free for this head when the head n before it has left it. Heads go in blocks: first
 * the times of them all, then, stage by stage, the books of machines, queues and sections. These are the day's own, kept
 * by the same sums in the same order as the event loop keeps them.
 */
export class SerialPass {
  /** Some work took no time. */
  hadInstantWork = false;
  /** When the heads of the block join the line: to be filled in beforehand, but for heads without end. */
  readonly joins = new Float64Array(BLOCK);
  /** Where the head taken last stays when it is not through, when it starts there and when it is done. */
  at = 0;
  start = 0;
  end = 0;
  private readonly day: DayState;
  private readonly stages: number;
  private readonly endless: boolean;
  /** Times of the block's heads, `BLOCK` of them a stage. */
  private readonly work: Float64Array;
  private readonly starts: Float64Array;
  private readonly ends: Float64Array;
  /**
   * When heads left, a row a stage; after those a row of zeros, for where there is always room. The block's heads stand
   * from `base` on in each row, and before them as many earlier ones as any stage has places.
   */
  private readonly leaves: Float64Array;
  private readonly row: number;
  private readonly reach: number;
  private base: number;
  /** Less `base`: where in `leaves` the head stands that makes room behind the stage for the block's first one. */
  private readonly roomFrom: Int32Array;
  private readonly queues: (ComingsAndGoings | null)[];
  private readonly sections: SectionBook[];

  constructor(day: DayState) {
    const { count, places } = day.line.stages;
    this.day = day;
    this.stages = count;
    this.endless = day.line.supply.kind === "saturated";
    this.work = new Float64Array(count * BLOCK);
    this.starts = new Float64Array(count * BLOCK);
    this.ends = new Float64Array(count * BLOCK);
    this.reach = Math.max(1, ...places.filter((limit) => limit !== NO_LIMIT));
    this.row = this.reach + Math.max(this.reach, BLOCK);
    this.base = this.reach;
    this.leaves = new Float64Array((count + 1) * this.row);
    this.roomFrom = Int32Array.from(places, (_, stage) => this.roomBehind(stage));
    this.queues = queueBooks(day, this.endless);
    this.sections = sectionBooks(day);
  }

  /** When the first stage is free again. */
  get freeAt(): number {
    return this.leaves[this.base - 1]!;
  }

  /** Takes the next heads, at most `BLOCK`, the whole way, and notes in `outs` when each is out. */
  takeThrough(heads: number, outs: Float64Array): void {
    for (const { index, work } of this.day.stageAt) work.drawInto(this.work, index * BLOCK, index * BLOCK + heads);
    this.time(heads);
    const all = { come: heads, start: heads, end: heads, leave: heads };
    for (let stage = 0; stage < this.stages; stage++) this.book(stage, all);
    for (const section of this.sections) this.bookSection(section, heads, heads);
    const last = this.rowOf(this.stages - 1);
    outs.set(this.leaves.subarray(last, last + heads));
    this.advance(heads);
  }

  /**
   * Takes one head as far as it comes by `until`, where it stays: `at`, `start` and `end`, Infinity for what is not known.
   * Where its last work takes no time it may be through, which is of no meaning: see `hadInstantWork`.
   */
  takeUntil(until: number): void {
    const { leaves, day } = this;
    if (this.endless) this.joins[0] = this.freeAt;
    let time = this.joins[0]!;
    let stage = 0;
    for (; stage < this.stages; stage++) {
      const here = this.rowOf(stage);
      this.start = Math.max(time, leaves[here - 1]!);
      this.end = this.start > until ? Infinity : this.start + day.stageAt[stage]!.work.draw();
      this.starts[stage * BLOCK] = this.start;
      this.ends[stage * BLOCK] = this.end;
      time = Math.max(this.end, leaves[this.roomFrom[stage]! + this.base]!);
      if (time > until) break;
      leaves[here] = time;
    }
    this.stay(stage, until);
    this.advance(1);
  }

  /** Brings the books up to `until`: queues, sections, and machines that have nothing to do. */
  close(until: number): void {
    for (const queue of this.queues) queue?.goUntil(until);
    for (const { book } of this.sections) book.goUntil(until);
    for (let stage = 0; stage < this.stages; stage++) this.noteIdle(stage);
  }

  private time(heads: number): void {
    const { stages, row, base, endless, joins, work, starts, ends, leaves, roomFrom } = this;
    for (let head = 0; head < heads; head++) {
      let here = base + head;
      let time = endless ? leaves[here - 1]! : joins[head]!;
      joins[head] = time;
      let cell = head;
      for (let stage = 0; stage < stages; stage++) {
        const start = Math.max(time, leaves[here - 1]!);
        const end = start + work[cell]!;
        time = Math.max(end, leaves[roomFrom[stage]! + base + head]!);
        starts[cell] = start;
        ends[cell] = end;
        leaves[here] = time;
        cell += BLOCK;
        here += row;
      }
    }
  }

  private book(stage: number, { come, start, end, leave }: Passing): void {
    const { starts, ends, leaves } = this;
    const { stateSeconds } = this.machine(stage);
    const cell = stage * BLOCK;
    const here = this.rowOf(stage);
    let starved = stateSeconds[STARVED]!;
    let working = stateSeconds[WORKING]!;
    let blocked = stateSeconds[BLOCKED]!;
    for (let head = 0; head < start; head++) starved += starts[cell + head]! - leaves[here + head - 1]!;
    for (let head = 0; head < end; head++) {
      const work = ends[cell + head]! - starts[cell + head]!;
      if (work <= 0) this.hadInstantWork = true;
      working += work;
    }
    for (let head = 0; head < leave; head++) blocked += leaves[here + head]! - ends[cell + head]!;
    stateSeconds[STARVED] = starved;
    stateSeconds[WORKING] = working;
    stateSeconds[BLOCKED] = blocked;
    this.day.stageAt[stage]!.processed += end;
    if (come > 0) this.noteOwnTime(stage, stage > 0 ? leaves[here - this.row]! : this.joins[0]!);
    if (leave > 0) this.day.stageAt[stage]!.own.left = leaves[here + leave - 1]!;
    if (stage > 0) this.queues[stage]!.pass(leaves, here - this.row, come, starts, cell, start);
    else this.queues[0]?.pass(this.joins, 0, come, starts, 0, start);
  }

  /** The stage's own time begins with its first head, for which its machine has waited. */
  private noteOwnTime(stage: number, comes: number): void {
    const { own } = this.day.stageAt[stage]!;
    if (own.hasBegun) return;
    own.hasBegun = true;
    own.from = comes;
    own.fromSums[STARVED] = comes;
  }

  private bookSection({ first, last, book }: SectionBook, come: number, leave: number): void {
    const { leaves, joins } = this;
    if (first > 0) book.pass(leaves, this.rowOf(first - 1), come, leaves, this.rowOf(last), leave);
    else book.pass(joins, 0, come, leaves, this.rowOf(last), leave);
  }

  /** The head stays: so nobody leaves this stage or a later one any more. */
  private stay(at: number, until: number): void {
    this.at = at;
    for (let stage = at; stage < this.stages; stage++) {
      this.noteIdle(stage);
      this.leaves[this.rowOf(stage)] = Infinity;
    }
    for (let stage = 0; stage < at; stage++) this.book(stage, { come: 1, start: 1, end: 1, leave: 1 });
    if (at < this.stages) {
      this.book(at, { come: 1, start: this.start > until ? 0 : 1, end: this.end > until ? 0 : 1, leave: 0 });
    }
    for (const section of this.sections) {
      this.bookSection(section, section.first > at ? 0 : 1, section.last < at ? 1 : 0);
    }
  }

  /** The machine has been starved since its last head left, unless another one is put to it afterwards. */
  private noteIdle(stage: number): void {
    const left = this.leaves[this.rowOf(stage) - 1]!;
    if (left < Infinity) this.machine(stage).stateSince = left;
  }

  /** The heads of the block are earlier ones from now on; where a row is full, its end begins it anew. */
  private advance(heads: number): void {
    this.base += heads;
    if (this.base + BLOCK <= this.row) return;
    for (let stage = 0; stage < this.stages; stage++) {
      const from = stage * this.row;
      this.leaves.copyWithin(from, from + this.base - this.reach, from + this.base);
    }
    this.base = this.reach;
  }

  private machine(stage: number): PositionState {
    return this.day.stageAt[stage]!.positions[0]!;
  }

  /** Where in `leaves` the block's first head stands. */
  private rowOf(stage: number): number {
    return stage * this.row + this.base;
  }

  private roomBehind(stage: number): number {
    const { places } = this.day.line.stages;
    const next = stage + 1;
    const isLimited = next < this.stages && places[next] !== NO_LIMIT;
    return isLimited ? next * this.row - places[next]! : this.stages * this.row;
  }
}

/** Without want of heads none waits before the first stage. */
function queueBooks(day: DayState, endless: boolean): (ComingsAndGoings | null)[] {
  return day.stageAt.map(({ index, shown }) => (endless && index === 0 ? null : new ComingsAndGoings(shown)));
}

function sectionBooks({ stageAt, inSection }: DayState): SectionBook[] {
  const firsts = stageAt.filter(({ index, section }) => index === 0 || section !== stageAt[index - 1]!.section);
  return firsts.map(({ index, section }, rank) => ({
    first: index,
    last: (firsts[rank + 1]?.index ?? stageAt.length) - 1,
    book: new ComingsAndGoings(inSection[section]!),
  }));
}
