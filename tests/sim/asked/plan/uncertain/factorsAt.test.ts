import { describe, expect, it } from "vitest";
import { factorsAt, type UncertainFactor } from "../../../../../sim/asked/plan/index.ts";
import { normalQuantile } from "../../../../../sim/maths/statistics/index.ts";

const at = (factor: UncertainFactor, u: number) => factorsAt({ factor, paths: ["a"] }, u)[0]!;

describe("factorsAt", () => {
  it("is the quantile of each distribution", () => {
    expect(at({ family: "uniform", min: 0.8, max: 1.2 }, 0.25)).toBeCloseTo(0.9, 12);
    // P(X < mode) is (mode - min) / (max - min) = 0.25; above it 1 - (max - x)^2 / (span (max - mode)).
    const triangular: UncertainFactor = { family: "triangular", min: 0, mode: 1, max: 4 };
    expect(at(triangular, 0.25)).toBeCloseTo(1, 12);
    expect(at(triangular, 0.0625)).toBeCloseTo(0.5, 12);
    expect(at(triangular, 11 / 12)).toBeCloseTo(3, 12);
    // Median of a lognormal: mean / sqrt(1 + cv^2).
    expect(at({ family: "lognormal", mean: 1.1, cv: 0.75 }, 0.5)).toBeCloseTo(1.1 / 1.25, 10);
    // Half of a normal with mean 0.001 and sd 1 lies below 0, so its quantiles are near those of a half normal.
    expect(at({ family: "normal", mean: 1, sd: 0.1 }, 0.975)).toBeCloseTo(1 + 0.1 * normalQuantile(0.975), 8);
    expect(at({ family: "normal", mean: 1e-9, sd: 1 }, 0.5)).toBeCloseTo(0.6744898, 6);
  });

  it("gives every draw as much room, in the order of its first number, with one factor for each path", () => {
    const factor: UncertainFactor = { family: "draws", rows: [[2, 5], [1, 7], [3], [4, 4]] };
    const found = [0.01, 0.24, 0.26, 0.51, 0.76, 0.999].map((u) => factorsAt({ factor, paths: ["a", "b"] }, u));
    expect(found).toEqual([
      [1, 7],
      [1, 7],
      [2, 5],
      [3, 3],
      [4, 4],
      [4, 4],
    ]);
  });

  it("gives paths that are tied the same factor", () => {
    expect(factorsAt({ factor: { family: "uniform", min: 0, max: 2 }, paths: ["a", "b", "c"] }, 0.5)).toEqual([
      1, 1, 1,
    ]);
  });
});
