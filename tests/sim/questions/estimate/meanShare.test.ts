import { expect, it } from "vitest";
import type { Plan, ShareBy } from "../../../../sim/asked/plan/index.ts";
import { headFlow } from "../../../../sim/questions/estimate/index.ts";
import { dwell, planOf, saturated, station } from "../../../support/plans.ts";

const carcasses = (shareBy: ShareBy, supply: Plan["supply"] = saturated(9)) => {
  const sorting = station("sorting", 2, { removals: [{ as: "damaged", share: 1, shareBy }] });
  return headFlow(planOf(supply, [station("hang", 4), dwell("bleeding", 90, 30), sorting])).carcasses;
};

it("averages a share by weight over the weights", () => {
  // 0 at 2 kg to 0.4 at 3 kg, weights uniform between them: 0.2.
  const points = [
    { at: 2, share: 0 },
    { at: 3, share: 0.4 },
  ];
  const supply = { ...saturated(9), liveWeightKg: { family: "uniform", min: 2, max: 3 } } as Plan["supply"];
  expect(carcasses({ of: { kind: "live weight" }, between: "a line", points }, supply)).toBeCloseTo(0.8, 6);
});

it("takes a share by time at the mean times on the way", () => {
  // From the end of hanging to the start of sorting: 90 s.
  const of = {
    kind: "time",
    from: { stage: "hang", moment: "end" },
    to: { stage: "sorting", moment: "start" },
  } as const;
  const points = [
    { at: 0, share: 0 },
    { at: 180, share: 0.2 },
  ];
  expect(carcasses({ of, between: "a line", points })).toBeCloseTo(0.9, 9);
  expect(carcasses({ of, between: "steps", points })).toBe(1);
});
