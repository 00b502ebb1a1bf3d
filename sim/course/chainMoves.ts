import { type DayState, STATES } from "../engine/index.ts";
import { StepLog } from "./stepLog.ts";

const MOVING = STATES.indexOf("working");

/**
 * Follows how far the chains have moved, in shackles: whole at each step, in proportion to the time between, and not at
 * all while a chain stands. A row is written whenever a chain starts, stops or steps.
 */
export class ChainMoves {
  readonly log: StepLog;
  private readonly day: DayState;
  private readonly steps: Float64Array;
  private readonly shift: Int32Array;
  private readonly moved: Float64Array;
  private readonly since: Float64Array;
  private readonly moves: Uint8Array;

  constructor(day: DayState) {
    const { count } = day.line.chains;
    this.day = day;
    this.log = new StepLog(count);
    this.steps = new Float64Array(count);
    this.shift = new Int32Array(count);
    this.moved = new Float64Array(count);
    this.since = new Float64Array(count);
    this.moves = new Uint8Array(count);
  }

  /** Called after all events of an instant. */
  look(): void {
    const { chains } = this.day.line;
    for (let chain = 0; chain < chains.count; chain++) this.lookAt(chain);
  }

  private lookAt(chain: number): void {
    const { day, steps, shift, moved, since, moves } = this;
    const { chains } = day.line;
    const moving = day.stageAt[chains.stage[chain]!]!.positions[0]!.state === MOVING ? 1 : 0;
    const stepped = shift[chain] !== day.ringShift[chain];
    if (!stepped && moving === moves[chain] && day.now > 0) return;
    // Within a step it comes at most to the next shackle, where it waits until it may go on.
    const way = moves[chain] === 1 ? (day.now - since[chain]!) / chains.secondsPerShackle[chain]! : 0;
    moved[chain] = Math.min(steps[chain]! + 1, moved[chain]! + way);
    if (stepped) {
      steps[chain]!++;
      shift[chain] = day.ringShift[chain]!;
      moved[chain] = steps[chain]!;
    }
    since[chain] = day.now;
    moves[chain] = moving;
    this.log.set(chain, day.now, moved[chain]!);
  }
}
