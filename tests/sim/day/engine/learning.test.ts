import { describe, expect, it } from "vitest";
import { learningColumns } from "../../../../sim/day/line/learningColumns.ts";
import { constant, planOf, station, stream } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

/** Times of the heads at a station whose people learn, in units of what somebody needs who knows the work. */
function times(heads: number, learning: { rate: number; known: number; done: number }, positions = 1): number[] {
  const line = [station("trim", 1, { positions, buffer: Infinity, learning })];
  const day = runChecked(planOf(stream(constant(0.001), heads), line));
  const [starts, ends] = [passes(day, "trim", "start"), passes(day, "trim", "end")];
  return ends.map((end, head) => end - starts[head]!);
}

describe("people who learn a task", () => {
  it("follow Wright's law for units: 80, 70.21, 59.56, 47.65, 28.38, 22.71 % of the first at unit 2, 3, 5, 10, 50, 100", () => {
    // T. P. Wright, Journal of the Aeronautical Sciences 3, 1936, read for units: x^b with b = log2(0.8). A line between
    // rows of the table lies above it by less than 0.2 %.
    const found = times(100, { rate: 0.8, known: 100_000, done: 1 });
    const ofFirst = [80, 70.21037, 59.563734, 47.650987, 28.382708, 22.706166];
    for (const [row, unit] of [2, 3, 5, 10, 50, 100].entries()) {
      const ratio = (100 * found[unit - 1]!) / found[0]!;
      expect(Math.abs(ratio / ofFirst[row]! - 1)).toBeLessThan(0.002);
    }
  });

  it("need what is written once they know it, and no less", () => {
    const found = times(12, { rate: 0.9, known: 8, done: 1 });
    for (const seconds of found.slice(7)) expect(seconds).toBeCloseTo(1, 9);
    // Three doublings before: 0.9 to the power of minus three.
    expect(found[0]).toBeCloseTo(1 / 0.9 ** 3, 9);
  });

  it("begin where they stand, and share the heads among their positions", () => {
    expect(times(1, { rate: 0.8, known: 64, done: 16 })[0]).toBeCloseTo(1 / 0.8 ** 2, 9);
    // The third and fourth head are the second of each position.
    const two = times(4, { rate: 0.8, known: 1024, done: 1 }, 2);
    expect(two[2]! / two[0]!).toBeCloseTo(0.8, 9);
  });

  it("are a table that reaches from the first head to what is known, each row on the law", () => {
    const { heads, factor } = learningColumns({ rate: 0.85, known: 5000, done: 1 });
    expect(heads[0]).toBeLessThanOrEqual(1);
    expect(heads.at(-1)).toBe(5000);
    for (const [row, n] of heads.entries()) expect(factor[row]! / (n / 5000) ** Math.log2(0.85)).toBeCloseTo(1, 9);
  });
});
