import { beforeAll, expect, test } from "vitest";
import { judge, type PlanVerdict, proofPlans } from "../../../support/adviceProof.ts";

/**
 * Advice against the same changes simulated afresh with other seeds, on ten random plans with fixed seeds. If each plan's advice holds
 * with the stated 95 %, three or more of ten fail with a probability of 1.2 % (binomial). Over more plans: tests/proofs.
 */
let verdicts: PlanVerdict[];
beforeAll(async () => {
  const found = await Promise.all(
    proofPlans(10, 0, 16).map((plan) => judge(plan, plan.name, { days: 20, freshDays: 40 })),
  );
  verdicts = found.filter((verdict) => verdict !== null);
}, 120_000);

const failing = (of: (verdict: PlanVerdict) => boolean) => verdicts.filter(of).map(({ plan }) => plan);

test("is given on most of the plans", () => {
  expect(verdicts.length).toBeGreaterThanOrEqual(6);
  expect(verdicts.filter(({ told }) => told > 0).length).toBeGreaterThanOrEqual(3);
});

test("prints intervals that hold afresh", () => {
  expect(failing(({ outside }) => outside > 0).length).toBeLessThan(3);
});

test("begins with one of the truly best", () => {
  expect(failing(({ topIsBest }) => topIsBest === false).length).toBeLessThan(3);
});

test("never offers what breaks a limit more", () => {
  expect(verdicts.flatMap(({ harmful }) => harmful)).toEqual([]);
});
