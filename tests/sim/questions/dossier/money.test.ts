import { describe, expect, it } from "vitest";
import {
  type Business,
  breakEvenHeads,
  capitalPerYear,
  cashFlows,
  contributionPerHead,
  fullCost,
  hasValue,
  loanPlan,
  netPresentValue,
  presentValue,
  soldHeads,
  standstillWeek,
  yearMoney,
  yearsUntilTooSmall,
} from "../../../../sim/questions/dossier/money.ts";

/** Worked examples of engineering economy, recomputed from their formulas (annuity, present value, capital recovery, break-even). */

const SEASON = new Array<number>(12).fill(1);

/** Nothing but what an example needs. */
function business(changes: Partial<Business> = {}): Business {
  return {
    markets: [{ name: "all", product: "", headsPerWeek: 1000, season: SEASON, growth: 0, pricePerKg: 1 }],
    years: { looked: 8, weeks: 50 },
    daysPerWeek: 5,
    peak: 1,
    capacityHeads: 10_000,
    kgPerHead: 1,
    payPerDay: 0,
    perHead: { animals: 0, energy: 0, packing: 0, byProducts: 0 },
    pricePerKg: null,
    overheadPerYear: 0,
    capital: null,
    training: 0,
    interest: 0.08,
    life: 8,
    buildingLife: 8,
    maintenance: 0,
    loan: null,
    rampUp: [],
    ...changes,
  };
}

const bought = (machines: number, building = 0, once = 0) => ({ items: [], open: [], machines, building, once });

describe("present value", () => {
  it("puts the first flow at year 0: -10,000, 3000, 4200, 6800 at 10 % is 1307.29, and a year later 1188.44", () => {
    const flows = [-10_000, 3000, 4200, 6800];
    expect(presentValue(flows, 0.1)).toBeCloseTo(1307.287754, 6);
    expect(presentValue([0, ...flows], 0.1)).toBeCloseTo(1188.443412, 6);
  });

  it("of 500,000 now and 110,000 for eight years at 8 % is 132,130.28", () => {
    // 50,000 heads a year at 1 EUR, and by-products of 1.20 EUR a head.
    const example = business({
      capital: bought(500_000),
      perHead: { animals: 0, energy: 0, packing: 0, byProducts: 1.2 },
    });
    expect(yearMoney(example, 1).cash).toBeCloseTo(110_000, 6);
    expect(netPresentValue(example)).toBeCloseTo(132_130.2838, 3);
  });

  it("buys machines anew when their life is over, and counts the rest of their price at the end", () => {
    const flows = cashFlows(business({ years: { looked: 5, weeks: 50 }, life: 3, capital: bought(900) }));
    const yearly = 50_000;
    const expected = [-900, yearly, yearly, yearly - 900, yearly, yearly + 900 / 3];
    expect(flows).toHaveLength(expected.length);
    for (const [year, flow] of flows.entries()) expect(flow).toBeCloseTo(expected[year]!, 6);
  });

  it("is told only where all that is bought and sold has a price", () => {
    expect(hasValue(business())).toBe(false);
    expect(hasValue(business({ capital: bought(1) }))).toBe(true);
    expect(hasValue(business({ capital: { ...bought(1), open: ["capital.crate"] } }))).toBe(false);
    const free = [{ ...business().markets[0]!, pricePerKg: null }];
    expect(hasValue(business({ capital: bought(1), markets: free }))).toBe(false);
  });
});

describe("equal yearly amounts", () => {
  it.each([
    [0.08, 10, 0.14902949],
    [0.05, 15, 0.09634229],
    [0.06, 8, 0.16103594],
    [0.1, 5, 0.26379748],
  ])("of 1 at %d over %d years are %d", (interest, life, expected) => {
    expect(capitalPerYear(business({ interest, life, capital: bought(1) }))).toBeCloseTo(expected, 8);
  });

  it("of a loan of 200,000 at 7.5 % a year in 180 months are 1854.02 a month", () => {
    const loan = loanPlan(business({ capital: bought(400_000), loan: { share: 0.5, interest: 0.075, years: 15 } }))!;
    expect(loan.amount).toBe(200_000);
    expect(loan.perMonth).toBeCloseTo(1854.02472, 5);
    expect(loan.interestPaid).toBeCloseTo(180 * 1854.02472 - 200_000, 2);
    expect(loan.cover[0]).toBeCloseTo(50_000 / (12 * 1854.02472), 6);
  });
});

describe("break-even", () => {
  // Fixed 900,000, price 2.10, variable 1.35: 1,200,000 units.
  const example = business({
    overheadPerYear: 900_000,
    markets: [{ ...business().markets[0]!, pricePerKg: 2.1 }],
    perHead: { animals: 1.35, energy: 0, packing: 0, byProducts: 0 },
  });

  it("is what is fixed over what a head brings: 1,200,000 heads of a year, by its 250 days", () => {
    expect(contributionPerHead(example, 1)).toBeCloseTo(0.75, 12);
    expect(breakEvenHeads(example, 1)! * 250).toBeCloseTo(1_200_000, 6);
  });

  it("is never where a head brings nothing, and open without a price", () => {
    expect(breakEvenHeads({ ...example, perHead: { ...example.perHead, animals: 3 } }, 1)).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(breakEvenHeads({ ...example, markets: [{ ...example.markets[0]!, pricePerKg: null }] }, 1)).toBeNull();
  });

  it("says what a week's standstill costs: what its heads would have brought", () => {
    expect(standstillWeek(example, 1)).toBeCloseTo(1000 * 0.75, 9);
  });
});

describe("what is sold", () => {
  const growing = [{ ...business().markets[0]!, growth: 0.1, season: [2, ...new Array<number>(10).fill(1), 0] }];

  it("is what is asked for, month by month no more than the busiest day allows", () => {
    const example = business({ markets: growing, capacityHeads: 300, peak: 1.2 });
    const weeks = 50 / 12;
    expect(soldHeads(example, 2, 1).asked).toBeCloseTo(1000 * 1.1 * 12 * weeks, 6);
    expect(soldHeads(example, 2, 1).sold).toBeCloseTo((1250 + 1100 * 10) * weeks, 6);
  });

  it("falls short in the first year by what the first weeks cannot do", () => {
    const rampUp = [
      { week: 1, share: 0.5, heads: 0, slowest: "" },
      { week: 2, share: 1, heads: 0, slowest: "" },
    ];
    const example = business({ capacityHeads: 250, rampUp });
    const short = 1000 - 0.5 * 1250;
    expect(soldHeads(example, 1, 1).sold).toBeCloseTo(50_000 - short, 6);
    expect(soldHeads(example, 2, 1).sold).toBeCloseTo(50_000, 6);
  });

  it("does not fit any more after so many full years: 2000 x 1.1^3 / 5 is 532 heads of a day", () => {
    const at = (capacityHeads: number) => yearsUntilTooSmall(business({ markets: growing, capacityHeads }));
    expect(at(2000 * 1.1 ** 3 * 0.2 + 0.01)).toBe(4);
    expect(at(2000 * 1.1 ** 3 * 0.2 - 0.01)).toBe(3);
    expect(at(100)).toBe(0);
    expect(at(1e6)).toBeNull();
  });
});

it("the full cost is the sum of its parts, by head and by kilogram, and animals are not in it", () => {
  const example = business({
    payPerDay: 400,
    perHead: { animals: 9, energy: 0.3, packing: 0.2, byProducts: 1 },
    overheadPerYear: 20_000,
    capital: bought(100_000, 200_000, 30_000),
    training: 5000,
    maintenance: 0.03,
    kgPerHead: 1.25,
  });
  const { parts, total, perHead, perKg } = fullCost(example, 1);
  const expected = { pay: 400 * 250, energy: 15_000, packing: 10_000, overhead: 20_000, upkeep: 9000 };
  for (const [part, amount] of Object.entries(expected))
    expect(parts[part as keyof typeof parts]).toBeCloseTo(amount, 6);
  const recovery = (0.08 * 1.08 ** 8) / (1.08 ** 8 - 1);
  expect(parts.capital).toBeCloseTo(335_000 * recovery, 6);
  expect(total).toBeCloseTo(154_000 + 335_000 * recovery, 6);
  expect(perHead).toBeCloseTo(total / 50_000, 12);
  expect(perKg).toBeCloseTo(perHead / 1.25, 12);
});
