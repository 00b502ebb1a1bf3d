import type { Headcount } from "../state/headcount.ts";

const FIRST_ROOM = 16;

/**
 * The book of one queue or section when heads come in order and go in order, but each head's going is told as soon as it is
 * known, before others come. Goings wait in a ring until they are due, so that the integral is summed in the order of
 * time, exactly as the event loop sums it.
 */
export class ComingsAndGoings {
  private readonly count: Headcount;
  private due = new Float64Array(FIRST_ROOM);
  private first = 0;
  private waiting = 0;

  constructor(count: Headcount) {
    this.count = count;
  }

  /**
   * Heads come one after another, the first at `comings[from]`; the first `going` of them go again at `goings[goFrom]` and
   * so on, nobody before those told earlier. Who goes at the instant at which another comes has gone: a place frees
   * before it is taken.
   */
  pass(comings: Float64Array, from: number, coming: number, goings: Float64Array, goFrom: number, going: number): void {
    while (this.waiting + going > this.due.length) this.widen();
    const { due, first, count } = this;
    const mask = due.length - 1;
    let next = first;
    let end = first + this.waiting;
    let { area, since, heads, most } = count;
    for (let head = 0; head < coming; head++) {
      const comes = comings[from + head]!;
      for (; next < end; next++) {
        const goes = due[next & mask]!;
        if (goes > comes) break;
        area += heads-- * (goes - since);
        since = goes;
      }
      area += heads++ * (comes - since);
      since = comes;
      if (heads > most) most = heads;
      if (head < going) due[end++ & mask] = goings[goFrom + head]!;
    }
    count.area = area;
    count.since = since;
    count.heads = heads;
    count.most = most;
    this.first = next & mask;
    this.waiting = end - next;
  }

  /** Lets everybody go who is due by `time`. */
  goUntil(time: number): void {
    const { due, count } = this;
    const mask = due.length - 1;
    while (this.waiting > 0 && due[this.first]! <= time) {
      count.set(count.heads - 1, due[this.first]!);
      this.first = (this.first + 1) & mask;
      this.waiting--;
    }
  }

  private widen(): void {
    const wider = new Float64Array(2 * this.due.length);
    for (let rank = 0; rank < this.waiting; rank++)
      wider[rank] = this.due[(this.first + rank) & (this.due.length - 1)]!;
    this.due = wider;
    this.first = 0;
  }
}
