import { expect, it } from "vitest";
import { singleDayStudy } from "../../../../sim/days/run/singleDayStudy.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";

it("is one variant, the plan as it is, run once", () => {
  const study = singleDayStudy(HAND_MADE_PLAN, "s");
  expect(study).toMatchObject({ name: "Hand-made plant", seed: "s", replications: 1, factors: [] });
  expect(study.variants.map(({ plan }) => plan)).toEqual([HAND_MADE_PLAN]);
});
