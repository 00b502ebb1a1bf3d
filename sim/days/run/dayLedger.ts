import type { Batch } from "./batch.ts";
import type { SimulatedDay } from "./simulatedDay.ts";

/** Days put in place by variant and replication, whatever the order in which they come; a second copy is passed over. */
export class DayLedger {
  readonly #days: (SimulatedDay | undefined)[][];
  #count = 0;

  constructor(variants: number) {
    this.#days = Array.from({ length: variants }, () => []);
  }

  /** Number of different days. */
  get count(): number {
    return this.#count;
  }

  /** Whether the day is a new one. */
  place(day: SimulatedDay): boolean {
    const row = this.#days[day.variant]!;
    if (row[day.replication] !== undefined) return false;
    row[day.replication] = day;
    this.#count += 1;
    return true;
  }

  /** The days of a variant from 0 to before `until`, all of them when left out. None may be missing. */
  daysOf(variant: number, until = this.#days[variant]!.length): SimulatedDay[] {
    return Array.from({ length: until }, (_, replication) => {
      const day = this.#days[variant]![replication];
      if (day === undefined) throw new Error(`DayLedger: day ${replication} of variant ${variant} is missing`);
      return day;
    });
  }

  /** The days from 0 to before `until` that a variant does not have yet, as batches that are as long as can be. */
  missing(variant: number, until: number): Batch[] {
    const batches: Batch[] = [];
    const row = this.#days[variant]!;
    for (let replication = 0; replication < until; replication++) {
      if (row[replication] !== undefined) continue;
      const last = batches.at(-1);
      if (last !== undefined && last.first + last.count === replication) last.count += 1;
      else batches.push({ variant, first: replication, count: 1 });
    }
    return batches;
  }
}
