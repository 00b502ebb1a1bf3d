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

  /**
   * Heads come one after another, the first at `comings[from]`; the first `going` of them go again at `goings[goFrom]` and
   * so on, nobody before those told earlier. Who goes at the instant at which another comes has gone: a place frees
   * before it is taken.
   */
  pass(comings: Float64Array, from: number, coming: number, goings: Float64Array, goFrom: number, going: number): void {
    while (this.waiting + going > this.due.length) this.widen();
    const { due, row, first } = this;
    const { area, since, heads, most } = this.columns;
    const mask = due.length - 1;
    let next = first;
    let end = first + this.waiting;
    let sum = area[row]!;
    let last = since[row]!;
    let now = heads[row]!;
    let peak = most[row]!;
    for (let head = 0; head < coming; head++) {
      const comes = comings[from + head]!;
      for (; next < end; next++) {
        const goes = due[next & mask]!;
        if (goes > comes) break;
        sum += now-- * (goes - last);
        last = goes;
      }
      sum += now++ * (comes - last);
      last = comes;
      if (now > peak) peak = now;
      if (head < going) due[end++ & mask] = goings[goFrom + head]!;
    }
    area[row] = sum;
    since[row] = last;
    heads[row] = now;
    most[row] = peak;
    this.first = next & mask;
    this.waiting = end - next;
  }

  /** Lets everybody go who is due by `time`. */
  goUntil(time: number): void {
    const { due, row } = this;
    const { area, since, heads } = this.columns;
    const mask = due.length - 1;
    while (this.waiting > 0 && due[this.first]! <= time) {
      const goes = due[this.first]!;
      area[row]! += heads[row]!-- * (goes - since[row]!);
      since[row] = goes;
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
