import { expect, it } from "vitest";
import { cashOfDay } from "../../../../sim/questions/options/cashOfDay.ts";

it("cashOfDay is the margin, or the cost as a loss, with the daily share of purchases put back", () => {
  expect(cashOfDay({ margin: [100, 50], "cost.total": [900, 950], "cost.capital": [30, 30] })).toEqual([130, 80]);
  expect(cashOfDay({ "cost.total": [900, 950], "cost.capital": [30, null] })).toEqual([-870, -950]);
  expect(cashOfDay({ "cost.total": [900] })).toEqual([-900]);
});
