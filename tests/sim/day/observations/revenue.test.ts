import { expect, it } from "vitest";
import { revenue, revenueOf } from "../../../../sim/day/observations/revenue.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const MONEY = WHOLE_PLAN.money!;

it("prices carcasses, by-products and other ways out, some of which cost money", () => {
  expect(revenueOf("carcass", wholeDay(), WHOLE_PLAN, MONEY)).toBe(8280);
  expect(revenueOf("skins", wholeDay(), WHOLE_PLAN, MONEY)).toBe(120);
  expect(revenueOf("condemned", wholeDay(), WHOLE_PLAN, MONEY)).toBeCloseTo(-14.4, 10);
  expect(revenueOf("viscera", wholeDay(), WHOLE_PLAN, MONEY)).toBe(0);
  expect(revenue(wholeDay(), WHOLE_PLAN, MONEY)).toBeCloseTo(8385.6, 9);
});

it("earns nothing with a product that did not come that day", () => {
  expect(revenueOf("liver", wholeDay(), WHOLE_PLAN, { ...MONEY, pricesPerKg: { liver: 5 } })).toBe(0);
});
