import type { CompiledLine } from "../../line/index.ts";
import { STATES } from "../dayRecord.ts";
import type { BreakdownState } from "./breakdownState.ts";
import { NONE, NOTHING, STARVED } from "./codes.ts";
import type { CrewState } from "./crewState.ts";
import { Fifo } from "./fifo.ts";
import type { Item } from "./item.ts";
import type { Lot } from "./loadState.ts";
import type { StageState } from "./stageState.ts";

/** One position of a stage while a day runs; a dwell stage and a chain have one, their way out. */
export class PositionState {
  readonly index: number;
  readonly stage: StageState;
  /** Its place among the stage's positions, from 0. */
  readonly rank: number;
  readonly slot: number;
  /** Breakdowns that stop this position alone and go by its working time; filled in when they are there. */
  ownBreakdowns: readonly BreakdownState[] = [];
  /**
   * Item in hand, and further ones of the same cycle (crate steps that take several at once). Ways out of a dwell stage: the
   * first head, once it waits for a place or for a full vessel.
   */
  item: Item | null = null;
  readonly held: Fifo;
  /** The item in hand is finished and waits for a place; at a dwell stage: the first head waits for a full vessel. */
  done = false;
  state = STARVED;
  // Seconds begin as NaN and as 0 from the constructor's end on: see DayState.
  stateSince = Number.NaN;
  /** Seconds spent in each state. */
  readonly stateSeconds = new Float64Array(STATES.length);
  /** What its slot will announce. */
  announces = NOTHING;
  /** Seconds of work left when the run began. */
  remaining = Number.NaN;
  runStart = Number.NaN;
  /** Breakdowns that keep it down now; and the one of its own that strikes next, or struck last; null before. */
  downCauses = 0;
  ownBreakdown: BreakdownState | null = null;
  /** Lot of its last head; null before the first one. See changeover.ts. */
  lot: Lot | null = null;
  /** Crew that works here now. */
  crew: CrewState | null = null;
  /** Breaks that it had begun by then. */
  breaksSeen = 0;
  /** Who blocked next for a place in the stage that this position waits for. */
  nextWaiter: PositionState | null = null;

  constructor(line: CompiledLine, stage: StageState, index: number) {
    this.index = index;
    this.stage = stage;
    this.rank = index - line.stages.positionFrom[stage.index]!;
    this.slot = line.slots.ofPosition[index] ?? NONE;
    this.held = new Fifo();
    this.stateSince = 0;
    this.remaining = 0;
    this.runStart = 0;
  }
}
