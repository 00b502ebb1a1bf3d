const NONE = -1;

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
  private readonly isActive: Uint8Array;
  /** Start of the period under way, or of the last one. */
  private readonly since: Float64Array;
  /** End of the last period: work that goes on at the same instant, with the next head say, goes on with that period. */
  private readonly endedAt: Float64Array;
  /** The position whose period under way began first; `leaderEnds` when it may have ended at `leaderEnd`. */
  private leader = NONE;
  private leaderEnds = false;
  private leaderEnd = 0;
  private kept: ActivePeriodColumns = { position: [], from: [], to: [] };
  private readonly isMachine: Uint8Array;

  /** `isMachine`, by position: false for the ways out of dwell stages and chains, whose states say nothing here. */
  constructor(isMachine: readonly boolean[]) {
    this.isMachine = Uint8Array.from(isMachine, Number);
    this.isActive = new Uint8Array(isMachine.length);
    this.since = new Float64Array(isMachine.length);
    this.endedAt = new Float64Array(isMachine.length).fill(Number.NaN);
  }

  /** A machine is active while it works or is down. */
  machineTurns(position: number, active: boolean, now: number): void {
    if (this.isMachine[position] === 1) this.turn(position, active, now);
  }

  /** The position begins or ends to be active. */
  turn(position: number, active: boolean, now: number): void {
    if (active === (this.isActive[position] === 1)) return;
    if (this.leaderEnds && now > this.leaderEnd) this.settle();
    if (active) {
      if (this.endedAt[position] !== now) this.since[position] = now;
      this.isActive[position] = 1;
      if (this.leader === NONE) this.leader = position;
      return;
    }
    this.isActive[position] = 0;
    this.endedAt[position] = now;
    if (position !== this.leader) return;
    this.leaderEnds = true;
    this.leaderEnd = now;
  }

  /** The instant is over: the leader did end in it, or goes on. Whatever else ended lies within its period. */
  private settle(): void {
    const { leader, since } = this;
    this.leaderEnds = false;
    if (this.isActive[leader]) return;
    if (this.leaderEnd > since[leader]!) this.keep(leader, since[leader]!, this.leaderEnd);
    this.leader = this.earliest();
  }

  private keep(position: number, from: number, to: number): void {
    this.kept.position.push(position);
    this.kept.from.push(from);
    this.kept.to.push(to);
  }

  private earliest(): number {
    const { isActive, since } = this;
    let first = NONE;
    for (let position = 0; position < isActive.length; position++) {
      if (isActive[position] === 1 && (first === NONE || since[position]! < since[first]!)) first = position;
    }
    return first;
  }

  /** Forgets what was before; periods under way go on from now. */
  forget(now: number): void {
    this.kept = { position: [], from: [], to: [] };
    this.since.fill(now);
    this.endedAt.fill(Number.NaN);
  }

  /** The periods kept, and the longest of those under way cut off now. For the end of the day. */
  close(now: number): ActivePeriodColumns {
    if (this.leaderEnds) this.settle();
    const { leader } = this;
    if (leader !== NONE && this.since[leader]! < now) this.keep(leader, this.since[leader]!, now);
    return this.kept;
  }
}
