import { expect, it } from "vitest";
import { groupDigits } from "../../../../sim/text/units/index.ts";

it("groups the whole parts of numbers by threes and leaves decimals alone", () => {
  expect(groupDigits("224412 EUR")).toBe("224\u202F412 EUR");
  expect(groupDigits("-1234567.12345 to 999 EUR")).toBe("-1\u202F234\u202F567.12345 to 999 EUR");
  expect(groupDigits("0.00012345")).toBe("0.00012345");
});
