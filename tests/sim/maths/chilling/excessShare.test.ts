import { describe, expect, it } from "vitest";
import { excessShare, sumOf, termsAt } from "../../../../sim/maths/chilling/excessShare.ts";
import { MAX_TERMS, seriesTerms } from "../../../../sim/maths/chilling/seriesTerms.ts";

describe("excessShare", () => {
  it("falls with time, and the surface is colder than the mean, the mean colder than the centre", () => {
    for (const shape of ["slab", "cylinder", "sphere"] as const) {
      let before = 1 + 1e-12;
      for (const fourier of [0.001, 0.01, 0.1, 0.5, 1, 5]) {
        const [centre, mean, surface] = (["centre", "mean", "surface"] as const).map((place) =>
          excessShare(shape, 2, fourier, place),
        ) as [number, number, number];
        expect(centre).toBeLessThanOrEqual(before);
        expect(centre).toBeGreaterThan(mean);
        expect(mean).toBeGreaterThan(surface);
        expect(surface).toBeGreaterThan(0);
        before = centre;
      }
    }
  });

  it("leaves out only terms below 1e-15", () => {
    for (const fourier of [0.001, 0.01, 0.2, 1, 4]) {
      const all = sumOf(seriesTerms("cylinder", 3, MAX_TERMS), fourier, "centre");
      expect(Math.abs(excessShare("cylinder", 3, fourier, "centre") - all)).toBeLessThan(1e-15);
    }
    expect([0.2, 1].map(termsAt)).toEqual([6, 3]);
  });

  it("agrees at early times with the half-space of Carslaw and Jaeger 1959, section 2.7", () => {
    // Surface of a half-space in air: exp(h2) erfc(h), h = Bi sqrt(Fo); 0.6157 at h = 0.5 (Abramowitz and Stegun, table
    // 7.1: erfc(0.5) = 0.4795001222). A thick slab has not felt its middle at Fo = 0.01.
    const expected = Math.exp(0.25) * 0.4795001222;
    expect(excessShare("slab", 5, 0.01, "surface")).toBeCloseTo(expected, 9);
  });
});
