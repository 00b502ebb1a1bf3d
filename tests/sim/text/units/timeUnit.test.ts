import { expect, test } from "vitest";
import { timeUnitFor } from "../../../../sim/text/units/index.ts";

test("spans take seconds up to 2 min, minutes up to 5 h, hours beyond, whatever their sign", () => {
  expect([0, 119, 120, 17_999, 18_000].map((span) => timeUnitFor(span).unit)).toEqual(["s", "s", "min", "min", "h"]);
  expect(timeUnitFor(-600).unit).toBe("min");
});
