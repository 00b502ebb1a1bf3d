import { expect, it } from "vitest";
import { estimate, replicationsNeeded } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE } from "../../../support/workedSample.ts";

it("asks for 58 replications for a half-width of 3 from the worked pilot: 57.996690 rounded up (Stein 1945)", () => {
  expect(replicationsNeeded(3, estimate(BASE_SAMPLE, 0.95)!.sd, 10, 0.95)).toBe(58);
});

it("never asks for fewer than the pilot had", () => {
  expect(replicationsNeeded(1000, 10, 10, 0.95)).toBe(10);
});

it("refuses a half-width of 0 and a pilot of one", () => {
  expect(() => replicationsNeeded(0, 10, 10, 0.95)).toThrow(RangeError);
  expect(() => replicationsNeeded(3, 10, 1, 0.95)).toThrow(RangeError);
});
