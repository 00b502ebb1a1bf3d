import { expect, it } from "vitest";
import { capital, formatMinutes } from "../../../../sim/text/units/index.ts";

it.each([
  [29, "0 s"],
  [31, "1 min"],
  [5370, "1 h 30"],
  [-90, "\u22121 min"],
])("writes %d s to the minute as %s", (seconds, text) => {
  expect(formatMinutes(seconds)).toBe(text);
});

it("begins a sentence with a capital, whatever stands there", () => {
  expect(["breaks", '"places"', ""].map(capital)).toEqual(["Breaks", '"places"', ""]);
});
