const NONE = -1;

/** Was sent to another stage once: not sent again. */
export const DIVERTED = 1;
/** Left a chain's window, or a machine that broke, before its work was done. */
export const UNFINISHED = 2;
const FIRST_CAPACITY = 256;

/**
 * Heads and crates now in the plant, one row each; rows are reused, so the pool grows with what is present, not with what
 * has passed. Doubles when full (the only allocation while a day runs).
 */
export class ItemPool {
  /** Next item in whatever list the item stands in; a free row's next free row. */
  next = new Int32Array(FIRST_CAPACITY);
  /** Load the item came with, or -1. */
  load = new Int32Array(FIRST_CAPACITY);
  /** Heads: the hanging order, 0 first. Crates: heads still in it. */
  number = new Int32Array(FIRST_CAPACITY);
  /** Destination fixed beforehand (dead on arrival), or -1. */
  destination = new Int32Array(FIRST_CAPACITY);
  /** Stage it has to go to next instead of the usual one, or -1. */
  sendTo = new Int32Array(FIRST_CAPACITY);
  /** DIVERTED and UNFINISHED bits. */
  flags = new Int32Array(FIRST_CAPACITY);
  /** Gates it is between, one bit each. */
  inside = new Int32Array(FIRST_CAPACITY);
  /** Last station on a chain that finished its work on it, or -1. */
  doneAt = new Int32Array(FIRST_CAPACITY);
  /** Live weight, and what is left of it, kilograms. */
  weight = new Float64Array(FIRST_CAPACITY);
  mass = new Float64Array(FIRST_CAPACITY);
  /** Arrival of the head's load (or of the head in a stream), seconds. */
  arrived = new Float64Array(FIRST_CAPACITY);
  /** Dwell stages: when the head came in, and when its dwell is over, seconds. */
  entered = new Float64Array(FIRST_CAPACITY);
  ready = new Float64Array(FIRST_CAPACITY);
  /** Row-major: when the item passed the near end of each limit, NaN before. */
  stamps: Float64Array;
  live = 0;
  private readonly limits: number;
  private capacity = FIRST_CAPACITY;
  private free = NONE;
  private used = 0;

  constructor(limits: number) {
    this.limits = limits;
    this.stamps = new Float64Array(FIRST_CAPACITY * limits);
  }

  take(): number {
    let item = this.free;
    if (item !== NONE) this.free = this.next[item]!;
    else {
      if (this.used === this.capacity) this.grow();
      item = this.used++;
    }
    this.live++;
    this.next[item] = NONE;
    this.destination[item] = NONE;
    this.sendTo[item] = NONE;
    this.flags[item] = 0;
    this.inside[item] = 0;
    this.doneAt[item] = NONE;
    if (this.limits > 0) this.stamps.fill(Number.NaN, item * this.limits, (item + 1) * this.limits);
    return item;
  }

  give(item: number): void {
    this.live--;
    this.next[item] = this.free;
    this.free = item;
  }

  private grow(): void {
    this.capacity *= 2;
    this.next = widened(this.next, this.capacity);
    this.load = widened(this.load, this.capacity);
    this.number = widened(this.number, this.capacity);
    this.destination = widened(this.destination, this.capacity);
    this.sendTo = widened(this.sendTo, this.capacity);
    this.flags = widened(this.flags, this.capacity);
    this.inside = widened(this.inside, this.capacity);
    this.doneAt = widened(this.doneAt, this.capacity);
    this.weight = widened(this.weight, this.capacity);
    this.mass = widened(this.mass, this.capacity);
    this.arrived = widened(this.arrived, this.capacity);
    this.entered = widened(this.entered, this.capacity);
    this.ready = widened(this.ready, this.capacity);
    this.stamps = widened(this.stamps, this.capacity * this.limits);
  }
}

function widened<Row extends Int32Array | Float64Array>(rows: Row, length: number): Row {
  const wider = new (rows.constructor as new (length: number) => Row)(length);
  wider.set(rows);
  return wider;
}
