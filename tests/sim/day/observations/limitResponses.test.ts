import { expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("reads share beyond, tail and worst of a maximum", () => {
  expect(values["beyond.stick to evisceration"]).toBe(5 / 200);
  expect(values["p95.stick to evisceration"]).toBeCloseTo(12 + 0.95 * 63, 12);
  expect(values["worst.stick to evisceration"]).toBe(75);
});

it("has no value, not a zero, for a limit that no head passed", () => {
  expect(values).toMatchObject({
    "beyond.chilling time": null,
    "p05.chilling time": null,
    "worst.chilling time": null,
  });
});

it("takes the shortest time as the worst of a minimum, and both ends where both are limited", () => {
  const both: Plan = {
    ...HAND_MADE_PLAN,
    limits: [
      { ...HAND_MADE_PLAN.limits[0]!, minSeconds: 20, maxSeconds: null },
      { ...HAND_MADE_PLAN.limits[1]!, minSeconds: 1, maxSeconds: 9 },
    ],
  };
  expect(measure(handMadeDay(), both)["worst.stick to evisceration"]).toBe(12);
  const keys = responsesOf(both).map(({ key }) => key);
  expect(keys).toContain("shortest.chilling time");
  expect(keys).toContain("worst.chilling time");
  expect(keys).not.toContain("shortest.stick to evisceration");
});
