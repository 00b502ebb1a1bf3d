import { expect, test } from "vitest";
import { formatConfidence } from "../../../../sim/text/units/index.ts";

test("confidence is said in per cent with only the decimals it has", () => {
  expect([0.95, 0.9, 0.999, 0.9875].map(formatConfidence)).toEqual(["95 %", "90 %", "99.9 %", "98.75 %"]);
});
