import { describe, expect, it } from "vitest";
import type { Money, Plan, PlantCosts } from "../../../../sim/asked/plan/index.ts";
import { costSheet } from "../../../../sim/day/observations/costSheet.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { loanPerYear, plantCosts } from "../../../../sim/day/observations/plantCosts.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const GIVEN: PlantCosts = {
  daysPerYear: 250,
  building: { price: 1_000_000, lifeYears: 25 },
  packagingPerCarcass: 0.1,
  inspectionPerHead: 0.005,
  inspectionPerSecond: 36 / 3600,
  wastePerKg: 0.05,
  overheadPerYear: 50_000,
  maintenanceShare: 0.03,
  loan: { amount: 200_000, interestPerYear: 0.075, years: 15, paymentsPerYear: 12 },
};
const withCosts = (change: Partial<PlantCosts> = {}): Plan => {
  return { ...WHOLE_PLAN, money: { ...WHOLE_PLAN.money!, plantCosts: { ...GIVEN, ...change } } as Money };
};
const PLAN = withCosts();
const parts = plantCosts(wholeDay(), PLAN, PLAN.money!)!;
const machines = WHOLE_PLAN.line
  .flatMap((stage) => [stage, ...(stage.kind === "chain" ? stage.stations : [])])
  .reduce((sum, { capital }) => sum + (capital?.price ?? 0), 0);

describe("what the plant itself costs", () => {
  it("shares a building and the overhead out over its days: 1 000 000 / (25 x 250), 50 000 / 250", () => {
    expect(parts.building).toBe(160);
    expect(parts.overhead).toBe(200);
  });

  it("packs each carcass, and pays the inspection by head and by the 8 h of work", () => {
    expect(parts.packaging).toBeCloseTo(0.1 * wholeDay().heads.out.carcass!, 10);
    expect(parts.inspection).toBeCloseTo(0.005 * wholeDay().heads.hung + 36 * 8, 9);
  });

  // Regulation (EU) 2017/625, Annex IV Ch. II: 0.005 EUR a rabbit; 600 an hour for 7.5 h are 22.50 EUR.
  it("charges 22.50 for 4 500 rabbits at the Union's fee", () => {
    const day = { ...wholeDay(), heads: { ...wholeDay().heads, hung: 4500 } };
    const plan = withCosts({ inspectionPerSecond: 0 });
    expect(plantCosts(day, plan, plan.money!)!.inspection).toBeCloseTo(22.5, 12);
  });

  it("gets rid of what has no price of its own: viscera, blood and the dead, not skins or the condemned", () => {
    const priced = Object.keys(WHOLE_PLAN.money!.pricesPerKg);
    const { byProductsKg, outKg } = wholeDay().masses;
    const kg = Object.entries({ ...byProductsKg, ...outKg }).filter(([name]) => !["carcass", ...priced].includes(name));
    expect(kg.map(([name]) => name)).toContain("viscera");
    expect(parts.waste).toBeCloseTo(0.05 * kg.reduce((sum, [, each]) => sum + each, 0), 10);
  });

  it("maintains machines and building by their price", () => {
    expect(machines).toBeGreaterThan(0);
    expect(parts.maintenance).toBeCloseTo((0.03 * (1_000_000 + machines)) / 250, 9);
  });

  // NumPy's documentation of pmt (from memory): 1854.02472 a month for 200 000 at 7.5 % over 15 years.
  it("pays 1854.02 a month to the bank, of which what exceeds the loan is a cost", () => {
    expect(loanPerYear(GIVEN.loan!) / 12).toBeCloseTo(1854.02472, 5);
    expect(parts.loanInterest).toBeCloseTo((1854.02472 * 180 - 200_000) / 15 / 250, 4);
    expect(measure(wholeDay(), PLAN).loanPayment).toBeCloseTo((1854.02472 * 12) / 250, 5);
    const free = withCosts({ loan: { ...GIVEN.loan!, interestPerYear: 0 } });
    expect(plantCosts(wholeDay(), free, free.money!)!.loanInterest).toBeCloseTo(0, 10);
  });

  it("lowers the margin and raises the cost by exactly itself, and leaves the others as they were", () => {
    const [before, after] = [measure(wholeDay(), WHOLE_PLAN), measure(wholeDay(), PLAN)];
    expect(after.margin).toBe(before.margin);
    expect(after.costPerKg).toBe(before.costPerKg);
    expect(before).not.toHaveProperty("fullMargin");
    const total = after["plantCost.total"]!;
    expect(after.fullMargin! - after.margin!).toBeCloseTo(-total, 8);
    expect((after.fullCostPerKg! - after.costPerKg!) * 1380).toBeCloseTo(total, 8);
    expect(parts.total).toBeCloseTo(
      parts.building +
        parts.packaging +
        parts.inspection +
        parts.waste +
        parts.overhead +
        parts.maintenance +
        parts.loanInterest,
      9,
    );
  });
});

describe("the sheet of costs", () => {
  it("has both margins, or none of what the plan does not give", () => {
    const sheet = costSheet(wholeDay(), PLAN)!;
    const values = measure(wholeDay(), PLAN);
    expect(sheet.fullMargin).toBeCloseTo(values.fullMargin!, 9);
    expect(sheet.fullCostPerKg).toBeCloseTo(values.fullCostPerKg!, 12);
    expect(costSheet(wholeDay(), WHOLE_PLAN)).toMatchObject({ plant: null, fullMargin: null, loanPayment: null });
    const unpriced = { ...PLAN, money: { ...PLAN.money!, pricesPerKg: {} } };
    expect(costSheet(wholeDay(), unpriced)).toMatchObject({ revenue: null, margin: null, fullMargin: null });
    expect(costSheet(wholeDay(), { ...PLAN, money: null })).toBeNull();
  });
});
