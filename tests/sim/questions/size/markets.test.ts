import { describe, expect, it } from "vitest";
import { readDemand } from "../../../../sim/questions/size/index.ts";
import { busiestWeek, headsOfWeek, marketsOf } from "../../../../sim/questions/size/markets.ts";
import { requiredRate } from "../../../../sim/questions/size/requiredRate.ts";
import { demandFaults, demandFile, demandOf, NO_FILES } from "../../../support/demands.ts";

const SHOPS = { name: "shops", carcasses: 5000, growth: "10 %", season: [2, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0] };
const KITCHENS = { name: "kitchens", heads: 1000 };

const marketed = (changes: Record<string, unknown> = {}) =>
  demandOf({ week: { days: 5 }, markets: [SHOPS, KITCHENS], ...changes });

describe("markets", () => {
  it("ask for heads by season and growth, carcasses through what is lost on the way", () => {
    const markets = marketsOf(marketed());
    const shops = 5000 / (1 - 0.0015) / (1 - 0.008);
    expect(headsOfWeek(markets, 1, 1)).toBeCloseTo(shops + 1000, 9);
    expect(headsOfWeek(markets, 3, 0)).toBeCloseTo(shops * 2 * 1.1 ** 2 + 1000, 9);
    expect(busiestWeek(markets, 3)).toBe(headsOfWeek(markets, 3, 0));
    expect(headsOfWeek(markets, 1, 11)).toBeCloseTo(1000, 9);
  });

  it("size the plant for the busiest month of the wanted year and the spare rate", () => {
    const demand = marketed({ years: { sizedFor: 2, spare: "20 %" } });
    expect(requiredRate(demand).headsPerWeek).toBeCloseTo(busiestWeek(marketsOf(demand), 2) * 1.2, 9);
  });

  it("of a demand without any are its week, every month and year alike, and the plant is sized for that week", () => {
    const demand = demandOf();
    expect(marketsOf(demand)).toMatchObject([{ headsPerWeek: 20_000, growth: 0 }]);
    expect(requiredRate(demand).headsPerWeek).toBe(20_000);
  });

  it("stand among the figures that the plant rests on, with year and spare rate and where they come from", () => {
    const of = (file: Record<string, unknown>, path: string) =>
      readDemand(demandFile(file), NO_FILES).demand!.figures.find((figure) => figure.path === path);
    const file = { week: { days: 5 }, markets: [KITCHENS], years: { spare: "5 %" } };
    expect(of(file, "markets")!.source).toBe("given");
    expect(of(file, "years.spare")).toMatchObject({ source: "given", value: "5 %" });
    expect(of(file, "years.sizedFor")).toMatchObject({ source: "invented", value: "3" });
    expect(of({}, "years.spare")).toBeUndefined();
  });
});

const EUR = { currency: "EUR" };

it.each<[string, Record<string, unknown>, RegExp]>([
  ["a market without a quantity", { week: { days: 5 }, markets: [{ name: "a" }] }, /^markets\[0\]: no quantity/],
  ["two markets of a name", { week: { days: 5 }, markets: [KITCHENS, KITCHENS] }, /^markets\[1\]\.name: 'kitchens'/],
  ["a week beside markets", { markets: [KITCHENS] }, /^week: "heads", but the markets say/],
  ["eleven months", { week: { days: 5 }, markets: [{ ...SHOPS, season: [1, 1] }] }, /^markets\[0\]\.season: 2 entries/],
  [
    "a year of nothing",
    { week: { days: 5 }, markets: [{ ...SHOPS, season: SHOPS.season.map(() => 0) }] },
    /^markets\[0\]\.season: every month is 0/,
  ],
  ["a spare rate of a week", { years: { spare: "5 %" } }, /^years\.spare: there are no markets/],
  ["a price of no step", { money: EUR, capital: { stations: { skining: "1 EUR" } } }, /did you mean 'skinning'/],
  ["money without a currency", { capital: { crate: "20 EUR" } }, /^money: missing, but capital\.crate speaks of money/],
  ["two currencies", { money: EUR, capital: { crate: "20 CHF" } }, /^capital\.crate: CHF, but the demand's money/],
  [
    "a building twice",
    { money: { ...EUR, plantCosts: { daysPerYear: 250, building: { price: "5 EUR", life: 9 } } }, capital: {} },
    /^money\.plantCosts\.building: the demand has "capital"/,
  ],
  [
    "weeks that do not agree with days",
    { money: { ...EUR, plantCosts: { daysPerYear: 250 } }, years: { weeks: 48 } },
    /^years\.weeks: 48 weeks of 5 days, but money/,
  ],
  ["a shift before the site opens", { available: { from: "07:00" } }, /^day\.shifts\[0\]: it begins before/],
  ["cleaning after the site closes", { available: { to: "14:30" } }, /^day\.shifts\[0\]: with the cleaning it ends/],
])("of the business, %s is told with its place and remedy", (_, changes, expected) => {
  const faults = demandFaults(changes);
  expect(
    faults.filter((words) => expected.test(words) || expected.test(words.slice(words.indexOf(":") + 2))),
  ).toHaveLength(1);
});
