import { expect, it } from "vitest";
import { formatRate } from "../../../../sim/text/units/formatRate.ts";

it.each([
  [620 / 3600, "620 /h"],
  [1 / 3600, "1 /h"],
  [1234 / 3600, "1234 /h"],
  [0, "0 /h"],
])("formatRate writes %d per second as %s", (perSecond, text) => {
  expect(formatRate(perSecond)).toBe(text);
});
