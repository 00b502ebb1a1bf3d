import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import { countedDays } from "../../../../sim/day/observations/index.ts";
import { netMoney } from "../../../../sim/days/decision/money.ts";

const file = new URL("../../../../experiments/plans/parts/week.json", import.meta.url);
const read = readPlan({
  ...JSON.parse(readFileSync(file, "utf8")),
  money: { currency: "EUR", livePrice: "2 EUR/kg", prices: { carcass: "6 EUR/kg" } },
});
const plan = read.plan!;
const days = countedDays(plan).length;
/** Three weeks: what was made, what left the plant on a mean day, cost and margin of a mean day. */
const weeks = (made: number, out: number, cost: number, margin: number) => ({
  plan,
  values: {
    "week.made": [made, made + 1, made - 1],
    carcasses: [out, out, out].map((each) => each / days),
    "cost.processing": [cost, cost + 1, cost - 1],
    margin: [margin, margin + 1, margin - 1],
  },
});

it("tells a week's money by its margin, but by its cost where other carcasses wait for the next week", () => {
  expect(read.faults).toEqual([]);
  const today = weeks(1000, 1000, 200, 900);
  const asked = { confidence: 0.95, matters: null };
  expect(netMoney(today, weeks(1000, 1000, 190, 910), asked)).toMatchObject({ by: "margin", size: "gain" });
  // A hundred more hang over the weekend: 500 less are earned this week, and ten less a day are spent on as many heads.
  const later = netMoney(today, weeks(1000, 900, 190, 400), asked)!;
  expect(later).toMatchObject({ by: "cost", size: "gain" });
  expect(later.perDay.mean).toBeCloseTo(10 * days, 9);
});
