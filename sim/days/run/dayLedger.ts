import type { DayRecord } from "../../day/engine/index.ts";
import type { Batch } from "./batch.ts";
import type { SimulatedDay } from "./simulatedDay.ts";
import type { VariantDays } from "./variantDays.ts";

/**
 * Days put in place by variant and replication, whatever the order in which they come; a second copy is passed over. A day
 * takes eight bytes a value: a long study has more of them than objects would find room for.
 */
export class DayLedger {
  readonly #rows: Rows[];
  readonly #keys: readonly string[];
  #count = 0;

  /** `keys`: what the values of a day are of, in their order. */
  constructor(variants: number, keys: readonly string[]) {
    this.#keys = keys;
    this.#rows = Array.from({ length: variants }, () => new Rows(keys.length));
  }

  /** Number of different days. */
  get count(): number {
    return this.#count;
  }

  /** Whether the day is a new one. */
  place({ variant, replication, values, day }: SimulatedDay): boolean {
    const rows = this.#rows[variant]!;
    if (rows.has(replication)) return false;
    rows.put(replication, values);
    if (replication === 0) rows.firstDay = day;
    this.#count += 1;
    return true;
  }

  /** The days of a variant from 0 to before `until`. None may be missing. */
  daysOf(variant: number, until: number): VariantDays {
    const rows = this.#rows[variant]!;
    for (let replication = 0; replication < until; replication++) {
      if (!rows.has(replication)) throw new Error(`DayLedger: day ${replication} of variant ${variant} is missing`);
    }
    return {
      keys: this.#keys,
      days: until,
      valuesOf: (key) => rows.column(this.#keys.indexOf(key), until),
      firstDay: rows.firstDay!,
    };
  }

  /** The days from 0 to before `until` that a variant does not have yet, as batches that are as long as can be. */
  missing(variant: number, until: number): Batch[] {
    const batches: Batch[] = [];
    const rows = this.#rows[variant]!;
    for (let replication = 0; replication < until; replication++) {
      if (rows.has(replication)) continue;
      const last = batches.at(-1);
      if (last !== undefined && last.first + last.count === replication) last.count += 1;
      else batches.push({ variant, first: replication, count: 1 });
    }
    return batches;
  }
}

const MIN_ROWS = 16;

/** The days of one variant, a row of numbers each; NaN, which no value is, stands for null. */
class Rows {
  firstDay: DayRecord | null = null;
  readonly #width: number;
  #values = new Float64Array(0);
  #known = new Uint8Array(0);

  constructor(width: number) {
    this.#width = width;
  }

  has(row: number): boolean {
    return this.#known[row] === 1;
  }

  put(row: number, values: readonly (number | null)[]): void {
    if (row >= this.#known.length) this.#grow(Math.max(MIN_ROWS, row + 1, Math.ceil(1.5 * this.#known.length)));
    this.#known[row] = 1;
    for (let column = 0; column < this.#width; column++) {
      this.#values[row * this.#width + column] = values[column] ?? Number.NaN;
    }
  }

  /** All null where there is no such column. */
  column(column: number, until: number): (number | null)[] {
    return Array.from({ length: until }, (_, row) => {
      const value = column === -1 ? Number.NaN : this.#values[row * this.#width + column]!;
      return Number.isNaN(value) ? null : value;
    });
  }

  #grow(rows: number): void {
    const [values, known] = [this.#values, this.#known];
    this.#values = new Float64Array(rows * this.#width);
    this.#known = new Uint8Array(rows);
    this.#values.set(values);
    this.#known.set(known);
  }
}
