import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PathRows } from "../../../../../sim/day/engine/binding/pathRows.ts";

const WIDTH = 7;
const FIXED = 5;
/** Enough for the stretches to be summed up many times over. */
const STEPS = 30_000;

/** The same kept plainly: every row has its own seconds by cell. */
class PlainRows {
  readonly rows = new Map<number, { seconds: number[]; moment: number }>();

  of(row: number) {
    if (!this.rows.has(row)) this.clear(row);
    return this.rows.get(row)!;
  }

  clear(row: number): void {
    this.rows.set(row, { seconds: new Array(WIDTH).fill(0), moment: 0 });
  }
}

describe("PathRows", () => {
  it("keeps each row's seconds by cell through any order of copying, going on and owing elsewhere", () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1, max: 600 }), (seed, items) => {
        const { rows, plain } = afterSteps(seed, items);
        for (const [row, { seconds, moment }] of plain.rows) {
          expect(rows.since(row)).toBe(moment);
          // All lengths are whole numbers, so that sums in any order are exact.
          expect([...rows.read(row)]).toEqual(seconds);
        }
      }),
      { seed: 20261, numRuns: 20 },
    );
  });

  it("writes down a way that was read before", () => {
    const rows = new PathRows(WIDTH, FIXED);
    rows.accrue(0, 2, 11);
    rows.accrue(0, 6, 30);
    rows.write(1, rows.read(0), 30);
    expect(rows.accrue(1, 2, 31)).toBe(1);
    expect([...rows.read(1)]).toEqual([0, 0, 12, 0, 0, 0, 19]);
  });
});

function afterSteps(seed: number, items: number): { rows: PathRows; plain: PlainRows } {
  const rows = new PathRows(WIDTH, FIXED);
  const plain = new PlainRows();
  const below = whole(seed);
  const pick = () => (below(2) === 0 ? below(FIXED) : rows.ofItem(below(items)));
  for (let step = 0; step < STEPS; step++) {
    const row = pick();
    const own = plain.of(row);
    const cell = below(WIDTH);
    const what = below(20);
    if (what < 9) {
      const seconds = below(5);
      expect(rows.accrue(row, cell, own.moment + seconds)).toBe(seconds);
      own.seconds[cell]! += seconds;
      own.moment += seconds;
    } else if (what < 17) {
      const from = pick();
      rows.copy(from, row);
      plain.rows.set(row, { seconds: [...plain.of(from).seconds], moment: plain.of(from).moment });
    } else if (what < 19) {
      const to = below(WIDTH);
      rows.move(row, cell, to, 1);
      own.seconds[cell]! -= 1;
      own.seconds[to]! += 1;
    } else if (below(50) === 0) {
      rows.clear(row);
      plain.clear(row);
    }
  }
  return { rows, plain };
}

/** Whole numbers from 0 to below a bound, from a small generator of its own (a linear congruence, modulus 2^32). */
function whole(seed: number): (bound: number) => number {
  let state = seed >>> 0;
  return (bound) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * bound);
  };
}
