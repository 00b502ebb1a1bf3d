import type { PaceColumns } from "../../line/index.ts";

/** Speed by the hour of one station while a day runs: the clock never goes back, so the row only goes on. */
export class Pace {
  private readonly columns: PaceColumns;
  /** Row that holds now; -1 before the first hour. */
  private row = -1;

  constructor(columns: PaceColumns) {
    this.columns = columns;
  }

  /** Seconds that work takes which begins now and would take so many as written. */
  secondsFrom(now: number, asWritten: number): number {
    const { fromSeconds } = this.columns;
    while (this.row + 1 < fromSeconds.length && fromSeconds[this.row + 1]! <= now) this.row++;
    return this.row < 0 ? asWritten : pacedSeconds(this.columns, this.row, asWritten);
  }
}

/** The same in the hours of one row. */
export function pacedSeconds({ speed, leastSeconds }: PaceColumns, row: number, asWritten: number): number {
  return Math.max(leastSeconds[row]!, asWritten / speed[row]!);
}
