/**
 * Next-event calendar over a fixed set of slots, each with at most one pending event.
 *
 * A tournament tree: `winners[n]` is the slot with the earliest time below node n, node 1 the whole. Scheduling walks one
 * path from leaf to root and stops as soon as nothing changes above; finding the next event costs nothing. At equal
 * times the lower slot number wins, so the order of simultaneous events is a matter of slot numbers, not of history.
 */
export class Calendar {
  /** Pending time by slot, Infinity for none. Padded to a power of two. */
  readonly times: Float64Array;
  private readonly winners: Int32Array;
  private readonly leaves: number;

  constructor(slots: number) {
    let leaves = 2;
    while (leaves < slots) leaves *= 2;
    this.leaves = leaves;
    this.times = new Float64Array(leaves).fill(Infinity);
    this.winners = new Int32Array(2 * leaves);
    for (let leaf = 0; leaf < leaves; leaf++) this.winners[leaves + leaf] = leaf;
    for (let node = leaves - 1; node >= 1; node--) this.winners[node] = this.winners[2 * node]!;
  }

  /** Slot of the next event; its time is `times[slot]`, Infinity when nothing is pending. */
  next(): number {
    return this.winners[1]!;
  }

  /** Sets, moves or (with Infinity) withdraws the slot's pending event. */
  schedule(slot: number, time: number): void {
    const { times, winners } = this;
    times[slot] = time;
    let node = slot + this.leaves;
    let winner = slot;
    let earliest = time;
    while (node > 1) {
      const rival = winners[node ^ 1]!;
      const rivalTime = times[rival]!;
      if (rivalTime < earliest || (rivalTime === earliest && rival < winner)) {
        winner = rival;
        earliest = rivalTime;
      }
      node >>= 1;
      if (winners[node] === winner && winner !== slot) return;
      winners[node] = winner;
    }
  }
}
