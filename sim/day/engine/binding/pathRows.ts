const FIRST_ITEMS = 256;
const FIRST_STRETCHES = 1 << 12;
/** The day's start, to which every way leads back; it owes nothing to anything. */
const START = 0;

/**
 * Ways back to the day's start. Each row stands for a moment and for a way to it without a gap: stretches of time, each
 * owed to one cell, that add up to that moment. To `accrue` is to go on to a later moment, with the time between owed to
 * one cell.
 *
 * Rows share what their ways have in common: to `copy` is to point at the same last stretch. From time to time, stretches
 * to which no row leads back are dropped, and what lies between two places where ways part is summed by cell; so memory
 * depends on how many rows and cells there are and not on how long the day is.
 *
 * The first rows are fixed; those after them belong to items and grow with what is present.
 */
export class PathRows {
  readonly width: number;
  private readonly fixed: number;
  /** By row. */
  private last: Int32Array;
  private moments: Float64Array;
  /** All stretches, each after those that it goes on from. */
  private stretches = stretchesOf(FIRST_STRETCHES);
  /** Where they are summed up; then the two change places. */
  private spare = stretchesOf(FIRST_STRETCHES);
  private count = 1;
  private readonly placeOfCell: Int32Array;

  constructor(width: number, fixed: number) {
    this.width = width;
    this.fixed = fixed;
    this.last = new Int32Array(fixed + FIRST_ITEMS);
    this.moments = new Float64Array(fixed + FIRST_ITEMS);
    this.placeOfCell = new Int32Array(width);
  }

  ofItem(item: number): number {
    const row = this.fixed + item;
    while (row >= this.last.length) this.growRows();
    return row;
  }

  /** The moment that the row stands for, seconds. */
  since(row: number): number {
    return this.moments[row]!;
  }

  copy(from: number, to: number): void {
    this.last[to] = this.last[from]!;
    this.moments[to] = this.moments[from]!;
  }

  /** Back to the day's start. */
  clear(row: number): void {
    this.last[row] = START;
    this.moments[row] = 0;
  }

  /** Goes on to `until` (which may lie ahead, for time that is sure to pass); returns the seconds between. */
  accrue(row: number, cell: number, until: number): number {
    const seconds = until - this.moments[row]!;
    if (seconds === 0) return 0;
    this.append(row, cell, seconds);
    this.moments[row] = until;
    return seconds;
  }

  /** Owes seconds to another cell. */
  move(row: number, from: number, to: number, seconds: number): void {
    const { before, cell, seconds: lengths } = this.stretches;
    const last = this.last[row]!;
    const isLast = last !== START && cell[last] === from && lengths[last] === seconds;
    if (isLast) this.last[row] = before[last]!;
    else this.append(row, from, -seconds);
    this.append(row, to, seconds);
  }

  /** Seconds by cell. */
  read(row: number): Float64Array {
    const { before, cell, seconds } = this.stretches;
    const sums = new Float64Array(this.width);
    for (let at = this.last[row]!; at !== START; at = before[at]!) sums[cell[at]!]! += seconds[at]!;
    return sums;
  }

  write(row: number, values: Float64Array, moment: number): void {
    this.clear(row);
    values.forEach((seconds, cell) => {
      if (seconds !== 0) this.append(row, cell, seconds);
    });
    this.moments[row] = moment;
  }

  private append(row: number, cell: number, seconds: number): void {
    if (this.count === this.stretches.seconds.length) this.shorten();
    const { stretches, count } = this;
    stretches.before[count] = this.last[row]!;
    stretches.cell[count] = cell;
    stretches.seconds[count] = seconds;
    this.last[row] = count;
    this.count = count + 1;
  }

  /** Drops the stretches to which no row leads back and sums the rest up between places where ways part. */
  private shorten(): void {
    const { last, count } = this;
    const marks = marksOf(this.stretches.before, count, last);
    const place = new Int32Array(count);
    let next = 1;
    this.placeOfCell.fill(0);
    for (let at = 1; at < count; at++) if (marks[at] === KEPT) next = this.sumUp(at, marks, place, next);
    for (let row = 0; row < last.length; row++) last[row] = place[last[row]!]!;
    const { stretches, spare } = this;
    this.stretches = spare;
    this.spare = stretches;
    this.count = next;
    // Else it would have to be done again soon, or cost more than what it makes room for.
    const length = spare.seconds.length;
    if (next > length / 2 || last.length > length) this.growStretches();
  }

  /** Writes the sums by cell from `at` back to the next stretch that is kept, from `next` on; returns what is free then. */
  private sumUp(at: number, marks: Uint8Array, place: Int32Array, next: number): number {
    const { spare, placeOfCell } = this;
    const { before, cell, seconds } = this.stretches;
    let end = next;
    let back = at;
    do {
      const owed = cell[back]!;
      if (placeOfCell[owed]! < next) {
        spare.cell[end] = owed;
        spare.seconds[end] = 0;
        spare.before[end] = end - 1;
        placeOfCell[owed] = end++;
      }
      spare.seconds[placeOfCell[owed]!]! += seconds[back]!;
      back = before[back]!;
    } while (marks[back] !== KEPT);
    spare.before[next] = place[back]!;
    place[at] = end - 1;
    return end;
  }

  private growStretches(): void {
    const more = 2 * this.stretches.seconds.length;
    this.stretches = longer(this.stretches, more);
    this.spare = stretchesOf(more);
  }

  private growRows(): void {
    const more = this.last.length + (this.last.length - this.fixed);
    const last = new Int32Array(more);
    last.set(this.last);
    const moments = new Float64Array(more);
    moments.set(this.moments);
    this.last = last;
    this.moments = moments;
  }
}

interface Stretches {
  /** The stretch that this one goes on from. */
  before: Int32Array;
  /** What it is owed to. */
  cell: Int32Array;
  seconds: Float64Array;
}

function stretchesOf(length: number): Stretches {
  return { before: new Int32Array(length), cell: new Int32Array(length), seconds: new Float64Array(length) };
}

function longer(stretches: Stretches, length: number): Stretches {
  const grown = stretchesOf(length);
  grown.before.set(stretches.before);
  grown.cell.set(stretches.cell);
  grown.seconds.set(stretches.seconds);
  return grown;
}

const PASSED = 1;
const KEPT = 2;

/** By stretch: kept where a row ends or ways part, passed where one way leads through, 0 where no row leads back to it. */
function marksOf(before: Int32Array, count: number, last: Int32Array): Uint8Array {
  const marks = new Uint8Array(count);
  for (let row = 0; row < last.length; row++) marks[last[row]!] = KEPT;
  for (let at = count - 1; at > START; at--) {
    if (marks[at] !== 0) marks[before[at]!] = marks[before[at]!] === 0 ? PASSED : KEPT;
  }
  marks[START] = KEPT;
  return marks;
}
