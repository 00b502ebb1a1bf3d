import { NO_LIMIT } from "../../line/index.ts";
import type { Sampler } from "../../random/index.ts";
import { STATES } from "../dayRecord.ts";
import { BLOCKED, type DayState, STARVED, WORKING } from "../dayState.ts";
import { ComingsAndGoings, type CrowdColumns } from "./comingsAndGoings.ts";

const WIDTH = STATES.length;
/** Cycle times of a stage that are drawn in a row. */
const BLOCK = 64;

/**
 * Heads of a serial line in the order in which they are hung, each taken through all its machines at one go:
 *
 *   start = max(it joins, the head before left)   end = start + work   leaves = max(end, a place behind is free)
 *
 * where a stage with n places has one free for this head when the head n before it has left it. The books of machines,
 * queues and sections are kept in the day's own columns by the same sums in the same order as the event loop keeps them.
 */
export class SerialPass {
  /** Some work took no time. */
  hadInstantWork = false;
  /** Where the head taken through last stays when it is not through, when it starts there and when it is done. */
  at = 0;
  start = 0;
  end = 0;
  private readonly stages: number;
  private readonly samplers: Sampler[];
  /** Blocks of cycle times of each stage, how many are left of the block, and how many heads more will surely need one. */
  private readonly work: Float64Array;
  private readonly workLeft: Int32Array;
  private readonly sure: Int32Array;
  private readonly seconds: Float64Array;
  private readonly stateSince: Float64Array;
  private readonly processed: Float64Array;
  /** When the last head left each stage; Infinity when it stays. */
  private readonly left: Float64Array;
  /**
   * Ring of each stage: when its last heads left, as many as it has places; `turn` is the oldest. A stage without limit
   * and the world behind the last stage have one entry that is always 0.
   */
  private readonly ring: Float64Array;
  private readonly ringFrom: Int32Array;
  private readonly turn: Int32Array;
  private readonly limited: Uint8Array;
  private readonly queues: ComingsAndGoings[];
  private readonly sections: ComingsAndGoings[];
  /** Stages of the sections in turn: from[section] .. from[section + 1]. */
  private readonly sectionFrom: number[];

  /** `sure`: so many heads are taken the whole way. */
  constructor(day: DayState, sure: number) {
    const { line } = day;
    const { stages } = line;
    const all = [...stages.names.keys()];
    this.stages = stages.count;
    this.samplers = day.work;
    this.work = new Float64Array(stages.count * BLOCK);
    this.workLeft = new Int32Array(stages.count);
    this.sure = new Int32Array(stages.count).fill(sure);
    this.seconds = day.stateSeconds;
    this.stateSince = day.stateSince;
    this.processed = day.processed;
    this.left = new Float64Array(stages.count);
    this.limited = Uint8Array.from(stages.places, (places) => (places === NO_LIMIT ? 0 : 1));
    this.ringFrom = new Int32Array(stages.count + 2);
    for (const stage of all) {
      this.ringFrom[stage + 1] = this.ringFrom[stage]! + (this.limited[stage] ? stages.places[stage]! : 1);
    }
    this.turn = this.ringFrom.slice();
    this.ring = new Float64Array(this.ringFrom[stages.count]! + 1);
    const { queueArea, queueSince, queueShown, queueMax, sectionArea, sectionSince, sectionHeads, sectionMax } = day;
    const queue = { area: queueArea, since: queueSince, heads: queueShown, most: queueMax };
    const section = { area: sectionArea, since: sectionSince, heads: sectionHeads, most: sectionMax };
    const firsts = all.filter((stage) => stage === 0 || stages.section[stage] !== stages.section[stage - 1]);
    // Without want of heads none waits before the first stage: what is noted there goes nowhere.
    const nowhere = line.supply.kind === "saturated" ? unread() : queue;
    this.queues = all.map((stage) => new ComingsAndGoings(stage === 0 ? nowhere : queue, stage));
    this.sections = firsts.map((stage) => new ComingsAndGoings(section, stages.section[stage]!));
    this.sectionFrom = [...firsts, stages.count];
  }

  /** When the first stage is free again. */
  get freeAt(): number {
    return this.left[0]!;
  }

  /**
   * Takes the next head, which joins the line at `joins`, as far as it comes by `until`. The time at which it is out, or
   * Infinity when it stays: then `at`, `start` and `end` say where, Infinity for what is not known yet.
   */
  through(joins: number, until: number): number {
    let time = joins;
    for (let index = 0; index < this.sections.length; index++) {
      const section = this.sections[index]!;
      section.come(time);
      time = this.throughStages(this.sectionFrom[index]!, this.sectionFrom[index + 1]!, time, until);
      if (time === Infinity) return time;
      section.go(time);
    }
    return time;
  }

  /** Brings the books up to `until`: queues, sections, and machines that have nothing to do. */
  close(until: number): void {
    for (const queue of this.queues) queue.goUntil(until);
    for (const section of this.sections) section.goUntil(until);
    for (let stage = 0; stage < this.stages; stage++) this.noteIdle(stage);
  }

  private throughStages(from: number, to: number, joins: number, until: number): number {
    const { queues, left, work, workLeft, seconds, processed, ring, turn } = this;
    let time = joins;
    for (let stage = from; stage < to; stage++) {
      const queue = queues[stage]!;
      queue.come(time);
      const free = left[stage]!;
      const start = Math.max(time, free);
      if (start > until) return this.stay(stage, start, Infinity);
      queue.go(start);
      if (workLeft[stage] === 0) this.drawBlock(stage);
      const end = start + work[(stage + 1) * BLOCK - workLeft[stage]!--]!;
      if (end <= start) this.hadInstantWork = true;
      seconds[stage * WIDTH + STARVED]! += start - free;
      if (end > until) return this.stay(stage, start, end);
      seconds[stage * WIDTH + WORKING]! += end - start;
      processed[stage]!++;
      const room = ring[turn[stage + 1]!]!;
      const leaves = Math.max(end, room);
      if (leaves > until) return this.stay(stage, start, end);
      seconds[stage * WIDTH + BLOCKED]! += leaves - end;
      this.leave(stage, leaves);
      time = leaves;
    }
    return time;
  }

  /** Draws no more than will be taken: the stream has to be where the event loop would have left it. */
  private drawBlock(stage: number): void {
    const count = Math.min(BLOCK, Math.max(1, this.sure[stage]!));
    this.sure[stage]! -= count;
    this.workLeft[stage] = count;
    this.samplers[stage]!.drawInto(this.work, (stage + 1) * BLOCK - count, (stage + 1) * BLOCK);
  }

  private leave(stage: number, time: number): void {
    this.left[stage] = time;
    if (this.limited[stage] === 0) return;
    const oldest = this.turn[stage]!;
    this.ring[oldest] = time;
    this.turn[stage] = oldest + 1 === this.ringFrom[stage + 1] ? this.ringFrom[stage]! : oldest + 1;
  }

  /** The head stays: so nobody leaves this stage or a later one any more. */
  private stay(at: number, start: number, end: number): number {
    this.at = at;
    this.start = start;
    this.end = end;
    for (let stage = at; stage < this.stages; stage++) {
      this.noteIdle(stage);
      this.leave(stage, Infinity);
    }
    return Infinity;
  }

  /** The machine has been starved since its last head left, unless another one is put to it afterwards. */
  private noteIdle(stage: number): void {
    if (this.left[stage]! < Infinity) this.stateSince[stage] = this.left[stage]!;
  }
}

function unread(): CrowdColumns {
  return { area: new Float64Array(1), since: new Float64Array(1), heads: new Int32Array(1), most: new Int32Array(1) };
}
