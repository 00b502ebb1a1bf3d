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
  private readonly columns: CrowdColumns;
  private readonly row: number;
  private due = new Float64Array(FIRST_ROOM);
  private first = 0;
  private waiting = 0;

  constructor(columns: CrowdColumns, row: number) {
    this.columns = columns;
    this.row = row;
  }

  /** A head comes. Who goes at the same instant has gone: a place frees before it is taken. */
  come(time: number): void {
    if (this.waiting > 0) this.goUntil(time);
    const { heads, most } = this.columns;
    this.book(time);
    const now = ++heads[this.row]!;
    if (now > most[this.row]!) most[this.row] = now;
  }

  /** A head will go at `time`, no earlier than those told before. */
  go(time: number): void {
    if (this.waiting === this.due.length) this.widen();
    this.due[(this.first + this.waiting++) & (this.due.length - 1)] = time;
  }

  /** Lets everybody go who is due by `time`. */
  goUntil(time: number): void {
    const { due, row } = this;
    const { heads } = this.columns;
    const mask = due.length - 1;
    while (this.waiting > 0 && due[this.first]! <= time) {
      this.book(due[this.first]!);
      heads[row]!--;
      this.first = (this.first + 1) & mask;
      this.waiting--;
    }
  }

  private book(time: number): void {
    const { area, since, heads } = this.columns;
    const { row } = this;
    area[row]! += heads[row]! * (time - since[row]!);
    since[row] = time;
  }

  private widen(): void {
    const wider = new Float64Array(2 * this.due.length);
    for (let rank = 0; rank < this.waiting; rank++)
      wider[rank] = this.due[(this.first + rank) & (this.due.length - 1)]!;
    this.due = wider;
    this.first = 0;
  }
}
