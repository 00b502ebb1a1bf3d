const FIRST_ITEMS = 256;

/**
 * Rows of seconds, one cell for each thing that seconds can be owed to. A row stands for a moment, `since`, and its cells
 * add up to that moment: a way back to the day's start without a gap. To `accrue` is to go on to a later moment, with the
 * time between owed to one cell.
 *
 * The first rows are fixed; those after them belong to items and grow with what is present.
 */
export class PathRows {
  readonly width: number;
  private values: Float64Array;
  private moments: Float64Array;
  private readonly fixed: number;
  private count: number;

  constructor(width: number, fixed: number) {
    this.width = width;
    this.fixed = fixed;
    this.count = fixed + FIRST_ITEMS;
    this.values = new Float64Array(this.count * width);
    this.moments = new Float64Array(this.count);
  }

  ofItem(item: number): number {
    const row = this.fixed + item;
    while (row >= this.count) this.grow();
    return row;
  }

  /** The moment that the row stands for, seconds. */
  since(row: number): number {
    return this.moments[row]!;
  }

  copy(from: number, to: number): void {
    if (from === to) return;
    const { width, values } = this;
    // A loop beats the call that copies ranges for rows as short as most are.
    if (width <= SHORT)
      for (let k = 0, a = from * width, b = to * width; k < width; k++) values[b + k] = values[a + k]!;
    else values.copyWithin(to * width, from * width, (from + 1) * width);
    this.moments[to] = this.moments[from]!;
  }

  /** Back to the day's start. */
  clear(row: number): void {
    this.values.fill(0, row * this.width, (row + 1) * this.width);
    this.moments[row] = 0;
  }

  /** Goes on to `until` (which may lie ahead, for time that is sure to pass); returns the seconds between. */
  accrue(row: number, cell: number, until: number): number {
    const seconds = until - this.moments[row]!;
    this.values[row * this.width + cell]! += seconds;
    this.moments[row] = until;
    return seconds;
  }

  /** Owes seconds to another cell. */
  move(row: number, from: number, to: number, seconds: number): void {
    this.values[row * this.width + from]! -= seconds;
    this.values[row * this.width + to]! += seconds;
  }

  read(row: number): Float64Array {
    return this.values.slice(row * this.width, (row + 1) * this.width);
  }

  write(row: number, values: Float64Array, moment: number): void {
    this.values.set(values, row * this.width);
    this.moments[row] = moment;
  }

  private grow(): void {
    this.count += this.count - this.fixed;
    const values = new Float64Array(this.count * this.width);
    values.set(this.values);
    const moments = new Float64Array(this.count);
    moments.set(this.moments);
    this.values = values;
    this.moments = moments;
  }
}

/** Cells up to which a plain loop is the faster copy. */
const SHORT = 48;
