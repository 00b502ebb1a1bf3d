import { expect, it } from "vitest";
import type { OutsideRow } from "../outside/register/outsideRow.ts";
import { agreesWith, type Precision } from "./agreesWith.ts";
import { relativeError } from "./relativeError.ts";

/** The comparisons of one test file, counted, so that the table in tests/outside/README.md cannot claim what is not done. */
export class OutsideChecks {
  private readonly rows: readonly OutsideRow[];
  private readonly simulatedDone = new Map<string, number>();
  private readonly exactDone = new Map<string, number>();

  constructor(rows: readonly OutsideRow[]) {
    this.rows = rows;
  }

  /** Title of the row's test: what, source, how sure. */
  title(id: string): string {
    const { what, source, labels } = this.rowOf(id);
    return `${id} ${what} (${source}; ${labels.join(", ")})`;
  }

  /** Mean of replications against an exact value (see `agreesWith`). */
  simulated(id: string, what: string, samples: readonly number[], expected: number, precision?: Precision): void {
    this.count(this.simulatedDone, id);
    agreesWith(`${id} ${what}`, samples, expected, precision);
  }

  /** A statement about a sample that errs with probability 0.001, made by the caller's own test. */
  chance(id: string, what: string, statistic: number, critical: number): void {
    this.count(this.simulatedDone, id);
    expect(statistic, `${id} ${what}`).toBeLessThanOrEqual(critical);
  }

  /** Relative error (absolute where 0 is expected) of no more than `tolerance`. */
  exact(id: string, what: string, found: number, expected: number, tolerance = 1e-6): void {
    this.count(this.exactDone, id);
    expect(relativeError(found, expected), `${id} ${what}: found ${found}, expected ${expected}`).toBeLessThanOrEqual(
      tolerance,
    );
  }

  /** Agreement with a rounded figure: no further off than half a unit of its last digit (and the stated error of `found`). */
  printed(id: string, what: string, found: number, figure: string, ownError = 0): void {
    this.count(this.exactDone, id);
    const digits = figure.split(".")[1]?.length ?? 0;
    const half = 0.5000001 * 10 ** -digits + ownError;
    expect(Math.abs(found - Number(figure)), `${id} ${what}: found ${found}, printed ${figure}`).toBeLessThanOrEqual(
      half,
    );
  }

  /** Call last: the test that every comparison of the table was made, no more and no fewer. */
  close(): void {
    it("made exactly the comparisons that the table counts", () => {
      const counted = this.rows.map((row) => [row.id, row.simulated, row.exact]);
      const made = this.rows.map(({ id }) => [id, this.simulatedDone.get(id) ?? 0, this.exactDone.get(id) ?? 0]);
      expect(made).toEqual(counted);
    });
  }

  private count(done: Map<string, number>, id: string): void {
    this.rowOf(id);
    done.set(id, (done.get(id) ?? 0) + 1);
  }

  private rowOf(id: string): OutsideRow {
    const row = this.rows.find((each) => each.id === id);
    if (row === undefined) throw new Error(`no row ${id} in the register`);
    return row;
  }
}
