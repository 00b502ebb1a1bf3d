import { expect, it } from "vitest";
import { biotOf, type CoolingBody, secondsPerFourier } from "../../../../sim/maths/chilling/coolingBody.ts";

const BODY: CoolingBody = {
  shape: "cylinder",
  radius: 0.03,
  surfaceCoefficient: 20,
  conductivity: 0.48,
  density: 1070,
  specificHeat: 3500,
};

it("has the Biot number 20 x 0.03 / 0.48 and the time 0.03^2 / 1.281709e-7 m2/s", () => {
  expect(biotOf(BODY)).toBeCloseTo(1.25, 14);
  expect(secondsPerFourier(BODY) * 1.281709e-7).toBeCloseTo(0.0009, 9);
});
