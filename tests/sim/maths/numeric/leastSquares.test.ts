import { describe, expect, it } from "vitest";
import { atRightAngles, leastSquares } from "../../../../sim/maths/numeric/index.ts";

/** Latin hypercube of eight points with three columns, and a response; values by NumPy and ml-matrix. */
const POINTS = [
  [0.0625, 0.5625, 0.8125, 12.1],
  [0.1875, 0.1875, 0.3125, 9.4],
  [0.3125, 0.9375, 0.0625, 14.0],
  [0.4375, 0.3125, 0.6875, 11.2],
  [0.5625, 0.8125, 0.4375, 14.9],
  [0.6875, 0.0625, 0.9375, 10.3],
  [0.8125, 0.6875, 0.1875, 13.6],
  [0.9375, 0.4375, 0.5625, 13.1],
];
const Y = POINTS.map((row) => row[3]!);
const COLUMNS = [POINTS.map(() => 1), ...[0, 1, 2].map((column) => POINTS.map((row) => row[column]! - 0.5))];

describe("leastSquares", () => {
  it("gives the coefficients, error and leverages of the worked design (NumPy)", () => {
    const fit = leastSquares(COLUMNS, Y);
    for (const [index, expected] of [12.325, 2.283331, 6.7499515, 1.5011593].entries())
      expect(fit.coefficients[index]).toBeCloseTo(expected, 6);
    const error = Math.sqrt(fit.residualSquares / (8 - fit.rank));
    expect(error).toBeCloseTo(0.2947673, 6);
    for (const [index, expected] of [0.3645739, 0.4759537, 0.4754137].entries())
      expect(error * Math.sqrt(fit.spread[index + 1]!)).toBeCloseTo(expected, 6);
    const leverages = [0.7188698, 0.8504573, 0.5268232, 0.1972773, 0.3344996, 0.5268232, 0.4226248, 0.4226248];
    for (const [row, expected] of leverages.entries()) expect(fit.leverages[row]).toBeCloseTo(expected, 6);
    const press = fit.residuals.reduce((sum, value, row) => sum + (value / (1 - fit.leverages[row]!)) ** 2, 0);
    expect(press).toBeCloseTo(2.4788716, 6);
  });

  it("gives null for a column that follows from those before it, and fits as if it were not there", () => {
    const [constant, first, second] = COLUMNS as [number[], number[], number[]];
    const twice = first.map((value) => 3 * value - 1);
    const fit = leastSquares([constant, first, twice, second], Y);
    const plain = leastSquares([constant, first, second], Y);
    expect(fit.coefficients[2]).toBeNull();
    expect(fit.spread[2]).toBeNull();
    expect(fit.rank).toBe(3);
    expect(fit.residualSquares).toBeCloseTo(plain.residualSquares, 12);
    expect(fit.coefficients[3]).toBeCloseTo(plain.coefficients[2]!, 12);
  });

  it("atRightAngles gives columns of length 1 that have nothing in common", () => {
    const found = atRightAngles([...COLUMNS, COLUMNS[1]!]);
    expect(found).toHaveLength(4);
    for (const [i, one] of found.entries())
      for (const [j, other] of found.entries())
        expect(one.reduce((sum, value, row) => sum + value * other[row]!, 0)).toBeCloseTo(i === j ? 1 : 0, 12);
  });
});
