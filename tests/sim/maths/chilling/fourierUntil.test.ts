import { describe, expect, it } from "vitest";
import { excessShare } from "../../../../sim/maths/chilling/excessShare.ts";
import { fourierUntil } from "../../../../sim/maths/chilling/fourierUntil.ts";

describe("fourierUntil", () => {
  it("undoes excessShare for every shape, from the first hundredth to the last", () => {
    for (const shape of ["slab", "cylinder", "sphere"] as const) {
      for (const biot of [0.01, 0.5, 3, 100]) {
        for (const share of [0.99, 0.9, 0.5, 0.1, 0.01]) {
          const fourier = fourierUntil(shape, biot, share);
          expect(excessShare(shape, biot, fourier, "centre") / share, `${shape} ${biot} ${share}`).toBeCloseTo(1, 12);
        }
      }
    }
  });

  it("takes the smallest number the series can tell when the centre has cooled by next to nothing", () => {
    expect(fourierUntil("cylinder", 1, 1 - 1e-16)).toBeLessThan(0.02);
  });
});
