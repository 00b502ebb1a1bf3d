import { describe, expect, it } from "vitest";
import { besselJ0J1, MAX_TERMS, type Shape, seriesTerms } from "../../../../sim/maths/chilling/seriesTerms.ts";
import { cephes } from "../../../support/cephes.ts";

const SHAPES: Shape[] = ["slab", "cylinder", "sphere"];

/** Between which multiples of pi the n-th root lies for any Biot number: [from n - a, to n - b]. */
const BETWEEN: Record<Shape, [number, number]> = { slab: [1, 0.5], cylinder: [1, 0.23], sphere: [1, 0] };

describe("seriesTerms", () => {
  it("finds each root once, in order, for Biot numbers from a hundred-thousandth to a hundred thousand", () => {
    for (const shape of SHAPES) {
      for (let power = -5; power <= 5; power++) {
        seriesTerms(shape, 10 ** power, MAX_TERMS).forEach(({ root }, index) => {
          const [low, high] = BETWEEN[shape].map((back) => (index + 1 - back) * Math.PI) as [number, number];
          expect(root, `${shape} ${power} ${index}`).toBeGreaterThan(low);
          expect(root, `${shape} ${power} ${index}`).toBeLessThan(high);
        });
      }
    }
  });

  it("solves the equation of the boundary: conducted to the surface = carried off by the air", () => {
    // d(profile)/dx at the surface is -root^2 x mean x size share: by Gauss's theorem the loss through the surface
    // (profile there x Biot x area) equals the root^2 x mean over the volume; area / volume is 1, 2, 3.
    SHAPES.forEach((shape, index) => {
      for (const biot of [0.05, 1, 12]) {
        for (const { root, surface, mean } of seriesTerms(shape, biot, 20)) {
          expect(((index + 1) * biot * surface) / (root * root * mean)).toBeCloseTo(1, 9);
        }
      }
    });
  });

  it("adds up to a body of one temperature before it cools", () => {
    for (const shape of SHAPES) {
      const sum = seriesTerms(shape, 1, MAX_TERMS).reduce((total, { mean }) => total + mean, 0);
      expect(sum).toBeCloseTo(1, 5);
    }
  });

  it("tends to the roots of a surface at the air's temperature: pi / 2, 2.404826, pi", () => {
    const roots = SHAPES.map((shape) => seriesTerms(shape, 1e9, 1)[0]!.root);
    expect(roots[0]).toBeCloseTo(Math.PI / 2, 7);
    expect(roots[1]).toBeCloseTo(2.404826, 6);
    expect(roots[2]).toBeCloseTo(Math.PI, 7);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a Biot number of %d", (biot) => {
    expect(() => seriesTerms("cylinder", biot, 1)).toThrow(RangeError);
  });
});

describe("besselJ0J1", () => {
  it("agrees with Cephes to 3e-15 from 0 to 200", () => {
    let worst = 0;
    for (let step = 0; step <= 20_000; step++) {
      const [j0, j1] = besselJ0J1(step / 100);
      worst = Math.max(worst, Math.abs(j0 - cephes.j0(step / 100)), Math.abs(j1 - cephes.j1(step / 100)));
    }
    expect(worst).toBeLessThan(3e-15);
  });

  it("vanishes at the first zeros in Abramowitz and Stegun 1964, table 9.5", () => {
    for (const zero of [2.4048255577, 5.5200781103, 8.6537279129]) expect(besselJ0J1(zero)[0]).toBeCloseTo(0, 9);
    for (const zero of [0, 3.8317059702, 7.0155866698]) expect(besselJ0J1(zero)[1]).toBeCloseTo(0, 9);
  });

  it("is even in J0, odd in J1, and 1 and 0 at 0", () => {
    expect(besselJ0J1(0)).toEqual([1, 0]);
    const [j0, j1] = besselJ0J1(7.3);
    expect(besselJ0J1(-7.3)).toEqual([j0, -j1]);
  });
});
