import { describe, expect, it } from "vitest";
import { QuantileTable, type TabledShape, uniformStream, unitQuantile } from "../../../../sim/maths/random/index.ts";

const SHAPES: TabledShape[] = [
  { family: "exponential" },
  ...[0.05, 0.3, 1, 2.5].flatMap((cv): TabledShape[] => [
    { family: "lognormal", cv },
    { family: "gamma", cv },
    { family: "weibull", cv },
  ]),
  { family: "beta", alpha: 1.8, beta: 4.2 },
  { family: "beta", alpha: 5, beta: 1 },
  { family: "normal", cut: -2.5 },
  { family: "normal", cut: 0 },
];

/** Relative to the value, or to a thousandth of the shape's unit where the value is near 0. */
function worstError(shape: TabledShape, smallestTail: number): number {
  const table = new QuantileTable(shape);
  const uniforms = uniformStream("quantile table", 0, shape.family, "probe");
  let worst = 0;
  for (let probe = 0; probe < 4000; probe++) {
    const tail = 2 ** (Math.log2(smallestTail) * uniforms.next() - 1e-9) / (probe % 2 === 0 ? 2 : 1);
    const upper = probe % 4 >= 2;
    const p = Math.min(Math.max(tail, smallestTail), 0.4999999);
    const exact = unitQuantile(shape, p, upper);
    // 1 - p loses digits of p for tiny tails: look the exact probability of the double up, not the one meant.
    const u = upper ? 1 - p : p;
    const found = table.at(u);
    const reference = upper ? unitQuantile(shape, 1 - u, true) : exact;
    worst = Math.max(worst, Math.abs(found - reference) / Math.max(Math.abs(reference), 1e-3));
  }
  return worst;
}

describe("QuantileTable", () => {
  for (const shape of SHAPES.filter((each) => !("cv" in each) || each.cv <= 1)) {
    it(`is within 1e-8 of the exact quantile of ${JSON.stringify(shape)} for tails of 1e-6 and more`, () => {
      expect(worstError(shape, 1e-6)).toBeLessThan(1e-8);
    });
  }

  for (const shape of SHAPES) {
    it(`is within 2e-7 of the exact quantile of ${JSON.stringify(shape)} for tails of 2^-30 and more`, () => {
      expect(worstError(shape, 2 ** -30)).toBeLessThan(2e-7);
    });
  }

  it("never falls as the probability rises", () => {
    const table = new QuantileTable({ family: "lognormal", cv: 0.4 });
    let last = -Infinity;
    for (let step = 0; step <= 20000; step++) {
      const value = table.at(step / 20000);
      expect(value).toBeGreaterThanOrEqual(last);
      last = value;
    }
  });

  it("takes probabilities of 0 and 1 as its smallest tails", () => {
    const table = new QuantileTable({ family: "exponential" });
    expect(table.at(0)).toBe(table.at(2 ** -34));
    expect(table.at(1)).toBeCloseTo(33 * Math.LN2, 6);
  });
});
