const NONE = -1;

const IDLE = 0;
const ACTIVE = 1;
/** Ended at this instant, at which it may still go on: with the next head, say. */
const ENDING = 2;

/** From when to when positions were active without a break, seconds: one row a period. */
export interface ActivePeriodColumns {
  position: number[];
  from: number[];
  to: number[];
}

/**
 * Collects the active periods that can matter to the momentary bottleneck: one that lies within another is never the
 * longest, and is dropped at once. What is kept has rising starts and rising ends.
 */
export class ActivePeriods {
  private readonly state: Uint8Array;
  /** Start of the period under way. */
  private readonly since: Float64Array;
  /** The position whose period under way began first. */
  private leader = NONE;
  private kept: ActivePeriodColumns = { position: [], from: [], to: [] };
  /** Positions that ended at the instant `endingAt`. */
  private readonly ending: number[] = [];
  private endingAt = 0;
  private readonly isMachine: readonly boolean[];

  /** `isMachine`, by position: false for the ways out of dwell stages and chains, whose states say nothing here. */
  constructor(isMachine: readonly boolean[]) {
    this.isMachine = isMachine;
    this.state = new Uint8Array(isMachine.length);
    this.since = new Float64Array(isMachine.length);
  }

  /** A machine is active while it works or is down. */
  machineTurns(position: number, active: boolean, now: number): void {
    if (this.isMachine[position]) this.turn(position, active, now);
  }

  /** The position begins or ends to be active. */
  turn(position: number, active: boolean, now: number): void {
    if (active === (this.state[position] === ACTIVE)) return;
    if (now > this.endingAt && this.ending.length > 0) this.settle();
    if (active) this.begin(position, now);
    else if (this.state[position] === ACTIVE) {
      this.state[position] = ENDING;
      this.ending.push(position);
      this.endingAt = now;
    }
  }

  private begin(position: number, now: number): void {
    if (this.state[position] === IDLE) {
      this.since[position] = now;
      if (this.leader === NONE) this.leader = position;
    }
    this.state[position] = ACTIVE;
  }

  /** The instant is over: what ended in it did end. Of several only the longest can matter. */
  private settle(): void {
    const { state, since, leader } = this;
    for (const position of this.ending) if (state[position] === ENDING) state[position] = IDLE;
    this.ending.length = 0;
    if (leader === NONE || state[leader] === ACTIVE) return;
    if (this.endingAt > since[leader]!) this.keep(leader, since[leader]!, this.endingAt);
    this.leader = this.earliest();
  }

  private keep(position: number, from: number, to: number): void {
    this.kept.position.push(position);
    this.kept.from.push(from);
    this.kept.to.push(to);
  }

  private earliest(): number {
    const { state, since } = this;
    let first = NONE;
    for (let position = 0; position < state.length; position++) {
      if (state[position] === ACTIVE && (first === NONE || since[position]! < since[first]!)) first = position;
    }
    return first;
  }

  /** Forgets what was before; periods under way go on from now. */
  forget(now: number): void {
    this.kept = { position: [], from: [], to: [] };
    this.since.fill(now);
  }

  /** The periods kept, and the longest of those under way cut off now. For the end of the day. */
  close(now: number): ActivePeriodColumns {
    this.settle();
    const { leader } = this;
    if (leader !== NONE && this.since[leader]! < now) this.keep(leader, this.since[leader]!, now);
    return this.kept;
  }
}
