import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/plan.ts";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(wholeDay(), WHOLE_PLAN);
const PROCESSING = 888.1;
const keys = (plan: Plan): string[] => responsesOf(plan).map(({ key }) => key);

describe("moneyResponses", () => {
  it("divides processing by carcasses and by their kilograms", () => {
    expect(values["cost.processing"]).toBeCloseTo(PROCESSING, 9);
    expect(values.costPerHead).toBeCloseTo(PROCESSING / 960, 12);
    expect(values.costPerKg).toBeCloseTo(PROCESSING / 1380, 12);
  });

  it("takes all costs, animals too, from the revenue", () => {
    expect(values.margin).toBeCloseTo(8385.6 - PROCESSING - 4455, 9);
    expect(values.marginPerHead).toBeCloseTo((8385.6 - PROCESSING - 4455) / 960, 12);
  });

  it("has parts that add up to the total, and products that add up to the revenue", () => {
    const sum = (start: string, but: string[]) =>
      Object.entries(values)
        .filter(([key]) => key.startsWith(start) && !but.includes(key))
        .reduce((total, [, value]) => total + value!, 0);
    expect(sum("cost.", ["cost.processing", "cost.total"])).toBeCloseTo(values["cost.total"]!, 9);
    expect(sum("revenue.", [])).toBeCloseTo(values.revenue!, 9);
  });

  it("has no cost per head, but a margin of the day, when no carcass came out", () => {
    const day = wholeDay();
    const none = { ...day, heads: { ...day.heads, out: {} }, masses: { ...day.masses, outKg: {} } };
    expect(measure(none, WHOLE_PLAN)).toMatchObject({ costPerHead: null, costPerKg: null, marginPerHead: null });
    expect(measure(none, WHOLE_PLAN).margin).toBeLessThan(0);
  });

  it("says in the label whether animals are reckoned, and speaks the plan's currency", () => {
    const label = (plan: Plan) => responsesOf(plan).find(({ key }) => key === "marginPerHead")?.label;
    expect(label(WHOLE_PLAN)).toBe("Margin per head, animals included");
    const unpriced: Plan = { ...WHOLE_PLAN, money: { ...WHOLE_PLAN.money!, livePricePerKg: null } };
    expect(label(unpriced)).toBe("Margin per head, animals not counted");
    expect(responsesOf(WHOLE_PLAN).find(({ key }) => key === "costPerKg")?.unit).toBe("EUR/kg");
  });

  it("has only the parts that the plan has", () => {
    expect(keys(HAND_MADE_PLAN).filter((key) => /cost|margin|revenue/.test(key))).toEqual([]);
    const bare: Plan = {
      ...HAND_MADE_PLAN,
      crews: [],
      money: { ...WHOLE_PLAN.money!, livePricePerKg: null, pricesPerKg: {} },
    };
    expect(keys(bare).filter((key) => /cost|margin|revenue/.test(key))).toEqual([
      "costPerHead",
      "costPerKg",
      "cost.processing",
      "cost.total",
    ]);
  });
});
