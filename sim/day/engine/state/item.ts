import { NONE } from "./codes.ts";

/** Was sent to another stage once: not sent again. */
export const DIVERTED = 1;
/** Left a chain's window, or a machine that broke, before its work was done. */
export const UNFINISHED = 2;
/** Its time in a dwell stage is up, but what the stage takes off is still on it: the vessel for that was full. */
export const UNDRAINED = 4;

/** Stunned, and neither stuck nor helped yet (only where somebody is called to heads that wait too long). */
export const STUNNED = 8;
/** Stuck where it was, by somebody who was called. */
export const STUCK = 16;

/** Its lot is held in the dwell stage where it hangs: others pass it. */
export const HELD = 32;

/** One for all items of a plan without limits: a list of their own would take up half as much again. */
const NO_STAMPS = new Float64Array(0);

/** A head or a crate in the plant. */
export class Item {
  /** Tells those apart that are present together. */
  readonly row: number;
  /** Next item in whatever list the item stands in. */
  next: Item | null = null;
  /** Load the item came with, or -1. */
  load = NONE;
  /** Heads: the hanging order, 0 first. Crates: heads still in it. */
  number = 0;
  /** Destination fixed beforehand (dead on arrival), or -1. */
  destination = NONE;
  /** Stage it has to go to next instead of the usual one, or -1. */
  sendTo = NONE;
  /** DIVERTED, UNFINISHED, UNDRAINED, STUNNED, STUCK and HELD bits. */
  flags = 0;
  /** Gates it is between, one bit each. */
  inside = 0;
  /** Last station on a chain that finished its work on it, or dwell stage in which its time was up, or -1. */
  doneAt = NONE;
  /** Dwell stages: how many came in before it. */
  turn = 0;
  // Numbers that are not whole begin as NaN: see DayState.
  /** Live weight, and what is left of it, kilograms. */
  weight = Number.NaN;
  mass = Number.NaN;
  /** Arrival of the head's load (or of the head in a stream), seconds. */
  arrived = Number.NaN;
  /** Dwell stages: when the head came in, and when its dwell is over, seconds. Travel: when it arrives. */
  entered = Number.NaN;
  ready = Number.NaN;
  /**
   * By limit, then by span that a share depends on: when the item passed the near end, NaN before; then by span the time to
   * the far end, NaN before that.
   */
  readonly stamps: Float64Array;

  constructor(row: number, stamps: number) {
    this.row = row;
    this.stamps = stamps === 0 ? NO_STAMPS : new Float64Array(stamps);
  }
}
