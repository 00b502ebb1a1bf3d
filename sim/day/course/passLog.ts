import { MOMENTS } from "../../asked/plan/index.ts";
import type { HeadWatcher } from "../engine/index.ts";
import { gather, groupRows } from "./groupRows.ts";
import { realColumn, wholeColumn } from "./growingColumn.ts";

/**
 * The way of every head: head h passed the points `points[from[h]] .. points[from[h + 1] - 1]` (stage x 4 + moment) at
 * `times`, ascending. Unlike a table by stage it keeps every pass of a head that comes back. Heads in hanging order.
 */
export interface HeadWays {
  count: number;
  from: Int32Array;
  times: Float64Array;
  points: Int16Array;
  /** Index of its load, -1 without. */
  load: Int32Array;
  /** When its load (or it, in a stream) arrived. */
  arrived: Float64Array;
  /** Index of its destination, -1 while it was on the line when the day ended. */
  destination: Int32Array;
}

/** The day has more in it than can be kept. */
export class CourseTooLong extends Error {
  override name = "CourseTooLong";
}

/** Writes down every pass of every head; throws `CourseTooLong` when there are more than `most`. */
export class PassLog implements HeadWatcher {
  private readonly most: number;
  private readonly head = wholeColumn();
  private readonly times = realColumn();
  private readonly points = wholeColumn();
  private readonly load = wholeColumn();
  private readonly arrived = realColumn();
  private readonly destinations = new Map<number, number>();

  constructor(most: number) {
    this.most = most;
  }

  begin(_head: number, load: number, arrived: number): void {
    this.load.push(load);
    this.arrived.push(arrived);
  }

  pass(head: number, stage: number, moment: number, now: number): void {
    if (this.head.length === this.most) throw new CourseTooLong(`more than ${this.most} passes in one day`);
    this.head.push(head);
    this.times.push(now);
    this.points.push(stage * MOMENTS.length + moment);
  }

  end(head: number, destination: number): void {
    this.destinations.set(head, destination);
  }

  ways(): HeadWays {
    const count = this.load.length;
    const { from, rows } = groupRows(this.head.column(), count);
    return {
      count,
      from,
      times: gather(rows, this.times, Float64Array),
      points: gather(rows, this.points, Int16Array),
      load: this.load.column(),
      arrived: this.arrived.column(),
      destination: Int32Array.from({ length: count }, (_, head) => this.destinations.get(head) ?? -1),
    };
  }
}
