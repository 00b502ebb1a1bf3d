import { expect, it } from "vitest";
import { surfaceCoefficient } from "../../../../sim/maths/chilling/index.ts";

it("changes by less than 1.2 % when the air's properties are taken at the film's temperature", () => {
  for (const speed of [0.5, 1, 2, 4]) {
    const film = surfaceCoefficient(0.06, speed, 20) / surfaceCoefficient(0.06, speed, 0);
    expect(Math.abs(film - 1)).toBeLessThan(0.012);
  }
});

it("rises a little faster than the square root of the speed", () => {
  const ratio = surfaceCoefficient(0.06, 4, 0) / surfaceCoefficient(0.06, 1, 0);
  expect(ratio).toBeGreaterThan(2);
  expect(ratio).toBeLessThan(2.3);
});
