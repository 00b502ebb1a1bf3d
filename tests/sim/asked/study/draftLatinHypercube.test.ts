import { describe, expect, it } from "vitest";
import { latinHypercube } from "../../../../sim/asked/study/draftLatinHypercube.ts";

describe("latinHypercube (McKay, Beckman and Conover 1979)", () => {
  it("has one point in every slice of every factor, over a range of sizes", () => {
    for (const points of [1, 2, 7, 100, 2000]) {
      for (const column of latinHypercube(3, points, "9")) {
        const slices = column.map((value) => Math.floor(value * points)).sort((a, b) => a - b);
        expect(slices).toEqual(Array.from({ length: points }, (_, slice) => slice));
      }
    }
  });

  it("draws the factors independently of each other: correlations of 400 points within 3.29/sqrt(400) (probability 0.999 each)", () => {
    const columns = latinHypercube(4, 400, "10").map((column) => column.map((value) => value - 0.5));
    for (let one = 0; one < 4; one++) {
      for (let other = 0; other < one; other++) {
        const products = columns[one]!.reduce((sum, value, point) => sum + value * columns[other]![point]!, 0);
        expect(Math.abs((products / 400) * 12)).toBeLessThan(3.29 / 20);
      }
    }
  });

  it("is decided by its seed, and one more factor leaves the others as they were", () => {
    expect(latinHypercube(2, 5, "a")).toEqual(latinHypercube(3, 5, "a").slice(0, 2));
    expect(latinHypercube(2, 5, "a")).not.toEqual(latinHypercube(2, 5, "b"));
  });

  it("estimates the mean of a straight line far better than independent points would", () => {
    const [one, two] = latinHypercube(2, 50, "c");
    const mean = one!.reduce((sum, value, point) => sum + 3 * value - two![point]!, 0) / 50;
    // Independent points: standard error sqrt(10/12/50) = 0.129; here each slice errs by at most 1/50 at random.
    expect(Math.abs(mean - 1)).toBeLessThan(0.01);
  });
});
