import { describe, expect, it } from "vitest";
import { capitalPerDay, costs } from "../../../../sim/day/observations/costs.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const MONEY = WHOLE_PLAN.money!;

describe("costs", () => {
  it("adds up what is written out here", () => {
    const day = costs(wholeDay(), WHOLE_PLAN, MONEY);
    expect(day.regularPay).toBeCloseTo(79_200 * 0.005 + 25_200 * 0.006, 9);
    expect(day.overtimePay).toBeCloseTo((10_800 * 0.005 + 3600 * 0.006) * 1.5, 9);
    expect(day.water).toBeCloseTo(6.44, 9);
    expect(day.wasteWater).toBeCloseTo(9.66, 9);
    expect(day.energy).toBeCloseTo(101.4, 9);
    // 220,000 / (10 x 220) for the skinning machine, 44,000 / (20 x 220) for the chain
    expect(day.capital).toBeCloseTo(110, 9);
    expect(day.processing).toBeCloseTo(547.2 + 113.4 + 6.44 + 9.66 + 101.4 + 110, 9);
    // 2500 kg hung, 25 kg of it dead on arrival, at 1.80
    expect(day.animals).toBeCloseTo(4455, 9);
    expect(day.total).toBeCloseTo(day.processing + 4455, 9);
  });

  it("charges capital, and people for their shifts, on a day without work", () => {
    const idle = { ...wholeDay(), workFinishSeconds: 0, finishSeconds: 0 };
    const none = { ...idle, stages: idle.stages.map((stage) => ({ ...stage, processed: 0 })) };
    const day = costs(none, WHOLE_PLAN, MONEY);
    expect(day).toMatchObject({ overtimePay: 0, water: 0, energy: 0, capital: 110 });
    expect(day.regularPay).toBeCloseTo(547.2, 9);
  });

  it("charges nothing for unpaid crews and unpriced animals", () => {
    const plan = { ...WHOLE_PLAN, crews: WHOLE_PLAN.crews.map((crew) => ({ ...crew, payPerSecond: null })) };
    const day = costs(wholeDay(), plan, { ...MONEY, livePricePerKg: null });
    expect(day).toMatchObject({ regularPay: 0, overtimePay: 0, animals: 0 });
  });
});

it("capitalPerDay spreads the price evenly over the days of its life", () => {
  expect(capitalPerDay({ price: 100_000, lifeYears: 8, daysPerYear: 250 })).toBe(50);
});
