/** Columns that books of this kind are kept in: the integral over time, when it was last brought up to date, heads now, most heads. */
export interface CrowdColumns {
  area: Float64Array;
  since: Float64Array;
  heads: Int32Array;
  most: Int32Array;
}

const FIRST_ROOM = 16;

/**
 * The book of one queue or section when heads come in order and go in order, but each head's going is told as soon as it is
 * known, before others come. Goings wait in a ring until they are due, so that the integral is summed in the order of
 * time, exactly as the event loop sums it.
 */
export class ComingsAndGoings {
  private readonly area: Float64Array;
  private readonly since: Float64Array;
  private readonly heads: Int32Array;
  private readonly most: Int32Array;
  private readonly row: number;
  private due = new Float64Array(FIRST_ROOM);
  private first = 0;
  private waiting = 0;

  constructor({ area, since, heads, most }: CrowdColumns, row: number) {
    this.area = area;
    this.since = since;
    this.heads = heads;
    this.most = most;
    this.row = row;
  }

  /** A head comes. Who goes at the same instant has gone: a place frees before it is taken. */
  come(time: number): void {
    if (this.waiting > 0) this.goUntil(time);
    const { area, since, heads, most, row } = this;
    const before = heads[row]!;
    area[row]! += before * (time - since[row]!);
    since[row] = time;
    heads[row] = before + 1;
    if (before >= most[row]!) most[row] = before + 1;
  }

  /** A head will go at `time`, no earlier than those told before. */
  go(time: number): void {
    if (this.waiting === this.due.length) this.widen();
    this.due[(this.first + this.waiting++) & (this.due.length - 1)] = time;
  }

  /** Lets everybody go who is due by `time`. */
  goUntil(time: number): void {
    const { due, area, since, heads, row } = this;
    const mask = due.length - 1;
    let { first, waiting } = this;
    let next = due[first]!;
    if (waiting === 0 || next > time) return;
    let sum = area[row]!;
    let last = since[row]!;
    let now = heads[row]!;
    do {
      sum += now-- * (next - last);
      last = next;
      first = (first + 1) & mask;
      next = due[first]!;
    } while (--waiting > 0 && next <= time);
    area[row] = sum;
    since[row] = last;
    heads[row] = now;
    this.first = first;
    this.waiting = waiting;
  }

  private widen(): void {
    const wider = new Float64Array(2 * this.due.length);
    for (let rank = 0; rank < this.waiting; rank++)
      wider[rank] = this.due[(this.first + rank) & (this.due.length - 1)]!;
    this.due = wider;
    this.first = 0;
  }
}
