import { expect, it } from "vitest";
import { equivalentRadius } from "../../../../sim/maths/chilling/index.ts";

it("gives the cylinder back its mass", () => {
  const radius = equivalentRadius(1.3, 0.36, 1070);
  expect(Math.PI * radius * radius * 0.36 * 1070).toBeCloseTo(1.3, 14);
});
