import { describe, expect, it } from "vitest";
import { carnotCop, idealCop, REFRIGERANTS } from "../../../../sim/maths/chilling/index.ts";

/** Worked with a property library: saturated vapour in, compressed without loss, saturated liquid out. */
const CYCLES = [
  [-10, 25, 6.5198, 6.303, 6.3712, 7.5186],
  [-10, 35, 4.8623, 4.5822, 4.6461, 5.8478],
  [-8, 35, 5.1707, 4.8769, 4.9465, 6.1663],
  [-5, 35, 5.692, 5.3754, 5.4546, 6.7037],
  [0, 35, 6.7615, 6.3993, 6.4985, 7.8043],
  [-10, 40, 4.2819, 3.9657, 4.0295, 5.263],
  [-30, 35, 2.8342, 2.6525, 2.6795, 3.7408],
] as const;

describe("the coefficient of performance", () => {
  it.each(CYCLES)(
    "%i / %i degC: within 0.4 %% of a property library for all refrigerants",
    (evaporating, condensing, ...of) => {
      REFRIGERANTS.forEach((refrigerant, index) => {
        expect(Math.abs(idealCop(refrigerant, evaporating, condensing) / of[index]! - 1)).toBeLessThan(0.004);
      });
      expect(carnotCop(evaporating, condensing)).toBeCloseTo(of[3], 4);
    },
  );

  // Cengel and Boles, Thermodynamics, R134a between 0.14 and 0.8 MPa (-18.77 and 31.31 degC): 3.97 (from memory). Not fitted to.
  it("fits a textbook cycle that it was not made from", () => {
    expect(Math.abs(idealCop("R134a", -18.77, 31.31) / 3.9676 - 1)).toBeLessThan(0.004);
  });

  it("says what a kelvin is worth: 3.1 % for one warmer at evaporating, 2.5 % for one colder at condensing", () => {
    expect(Math.sqrt(idealCop("ammonia", -8, 35) / idealCop("ammonia", -10, 35)) - 1).toBeCloseTo(0.031, 2);
    expect(idealCop("ammonia", -10, 35) / idealCop("ammonia", -10, 36) - 1).toBeCloseTo(0.025, 2);
  });
});
