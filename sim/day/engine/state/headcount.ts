/** How many heads are in one place (a queue, a section, between the ends of a gate): now, at most, and summed over time. */
export class Headcount {
  heads = 0;
  most = 0;
  // Sums and clocks begin as NaN: see DayState.
  /** Integral over time, head-seconds, up to `since`. */
  area = Number.NaN;
  since = Number.NaN;

  constructor() {
    this.area = 0;
    this.since = 0;
  }

  set(heads: number, now: number): void {
    this.book(now);
    this.heads = heads;
    if (heads > this.most) this.most = heads;
  }

  /** The integral begins anew. */
  restart(now: number): void {
    this.area = 0;
    this.since = now;
  }

  /** Brings the integral up to `now`. */
  book(now: number): void {
    this.area += this.heads * (now - this.since);
    this.since = now;
  }
}
