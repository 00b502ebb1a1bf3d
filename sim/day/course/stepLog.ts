import { gather, groupRows } from "./groupRows.ts";
import { realColumn, wholeColumn } from "./growingColumn.ts";

/**
 * Several step functions of time in one table: list l has the values `values[from[l]] ..`, each from its time in `times`
 * (seconds, strictly ascending within a list) until the next one's. A list's first row is at the day's start.
 */
export interface Steps {
  from: Int32Array;
  times: Float64Array;
  values: Float64Array;
}

/** Writes down the changes of several figures as a day runs. */
export class StepLog {
  private readonly last: Float64Array;
  private readonly lastRow: Int32Array;
  private readonly list = wholeColumn();
  private readonly times = realColumn();
  private readonly values = realColumn();

  constructor(lists: number) {
    this.last = new Float64Array(lists).fill(Number.NaN);
    this.lastRow = new Int32Array(lists).fill(-1);
  }

  /** Times must not go back. A value held for no time at all leaves no row. */
  set(list: number, now: number, value: number): void {
    if (this.last[list] === value) return;
    this.last[list] = value;
    const row = this.lastRow[list]!;
    if (row >= 0 && this.times.at(row) === now) {
      this.values.put(row, value);
      return;
    }
    this.lastRow[list] = this.list.length;
    this.list.push(list);
    this.times.push(now);
    this.values.push(value);
  }

  steps(): Steps {
    const { from, rows } = groupRows(this.list.column(), this.last.length);
    return { from, times: gather(rows, this.times, Float64Array), values: gather(rows, this.values, Float64Array) };
  }
}
