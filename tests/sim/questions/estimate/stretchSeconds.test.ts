import { expect, it } from "vitest";
import { stretchSeconds } from "../../../../sim/questions/estimate/stretchSeconds.ts";
import { chain, dwell, onChain, planOf, saturated, station } from "../../../support/plans.ts";

const plan = planOf(saturated(9), [
  station("a", 5, { travelSeconds: { family: "constant", value: 2 } }),
  dwell("bleeding", 90, 20),
  chain("rail", 10, 4, [onChain("cutting", 2, 2, 3)]),
  station("b", 7),
  station("trim", 99, { offLine: true, next: "b" }),
]);

it("stretchSeconds adds up work, dwells, rides and travel between two stages, the last one whole or not at all", () => {
  expect(stretchSeconds(plan, "a", "bleeding", false)).toBe(7);
  expect(stretchSeconds(plan, "a", "bleeding", true)).toBe(97);
  expect(stretchSeconds(plan, "bleeding", "cutting", true)).toBe(130);
  expect(stretchSeconds(plan, "a", null, true)).toBe(5 + 2 + 90 + 40 + 7);
});
