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
  private readonly shifts: Int32Array;
  private readonly moved: Float64Array;
  private readonly since: Float64Array;
  private readonly moves: Uint8Array;

  constructor(day: DayState) {
    const { count } = day.line.chains;
    this.day = day;
    this.log = new StepLog(count);
    this.steps = new Float64Array(count);
    this.shifts = new Int32Array(count);
    this.moved = new Float64Array(count);
    this.since = new Float64Array(count);
    this.moves = new Uint8Array(count);
  }

  /** Called after all events of an instant. */
  look(): void {
    for (const chain of this.day.chainAt) this.lookAt(chain);
  }

  private lookAt({ index, wayOut, shift, secondsPerShackle }: DayState["chainAt"][number]): void {
    const { day, steps, shifts, moved, since, moves } = this;
    const moving = wayOut.state === MOVING ? 1 : 0;
    const stepped = shifts[index] !== shift;
    if (!stepped && moving === moves[index] && day.now > 0) return;
    // Within a step it comes at most to the next shackle, where it waits until it may go on.
    const way = moves[index] === 1 ? (day.now - since[index]!) / secondsPerShackle : 0;
    moved[index] = Math.min(steps[index]! + 1, moved[index]! + way);
    if (stepped) {
      steps[index]!++;
      shifts[index] = shift;
      moved[index] = steps[index]!;
    }
    since[index] = day.now;
    moves[index] = moving;
    this.log.set(index, day.now, moved[index]!);
  }
}
