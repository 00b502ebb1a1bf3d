import { describe, expect, it } from "vitest";
import { besselJ0J1 } from "../../../../sim/maths/chilling/besselJ0J1.ts";
import { cephes } from "../../../support/cephes.ts";

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
