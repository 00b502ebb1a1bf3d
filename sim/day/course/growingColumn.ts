/** A column of numbers that grows as it is written: amortised O(1) a number, one typed array at the end. */
export class GrowingColumn<Row extends Float64Array | Int32Array> {
  length = 0;
  private rows: Row;

  constructor(first: Row) {
    this.rows = first;
  }

  push(value: number): void {
    if (this.length === this.rows.length) this.grow();
    this.rows[this.length++] = value;
  }

  at(index: number): number {
    return this.rows[index]!;
  }

  put(index: number, value: number): void {
    this.rows[index] = value;
  }

  /** A copy of what was written. */
  column(): Row {
    return this.rows.slice(0, this.length) as Row;
  }

  private grow(): void {
    const wider = new (this.rows.constructor as new (length: number) => Row)(Math.max(64, this.rows.length * 2));
    wider.set(this.rows);
    this.rows = wider;
  }
}

export function realColumn(): GrowingColumn<Float64Array> {
  return new GrowingColumn(new Float64Array(1024));
}

export function wholeColumn(): GrowingColumn<Int32Array> {
  return new GrowingColumn(new Int32Array(1024));
}
