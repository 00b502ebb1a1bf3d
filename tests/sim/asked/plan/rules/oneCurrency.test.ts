import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

/** What was changed in the sound whole plan, and every message that must come of it. */
const BAD: [string, (plan: Loose) => void, string[]][] = [
  [
    "a price of a vessel and not of what is in it",
    (plan) => {
      plan.money.prices = { "blood tank": "1 EUR/kg" };
    },
    [
      "money.prices[\"blood tank\"]: 'blood tank' is not a product; allowed: 'carcass', 'blood', 'skins', 'viscera', 'trimmings', 'drip', 'condemned', 'bruised', 'late', 'dead on arrival'; did you mean 'blood'?",
    ],
  ],
  [
    "each amount in another currency",
    (plan) => {
      plan.crews[1].pay = "18 CHF/h";
      plan.money.prices.skins = "-0.05 USD/kg";
      stageOf(plan, "stunning").capital.price = "24000 SEK";
      plan.money.energy = "0.25 GBP/kWh";
      plan.money.water = "2 NOK/m3";
      plan.money.wasteWater = "3 DKK/m3";
      plan.money.livePrice = "2 PLN/kg";
    },
    [
      "crews[1].pay: CHF, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
      "line[1].capital.price: SEK, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
      "money.water: NOK, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
      "money.wasteWater: DKK, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
      "money.energy: GBP, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
      "money.livePrice: PLN, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
      "money.prices.skins: USD, but the plan's money is in EUR; allowed: amounts in EUR; convert it",
    ],
  ],
  [
    "pay without prices",
    (plan) => (plan.money = null),
    [
      'money: missing, but crews[1].pay speaks of money; allowed: an object with the currency; add "money": {"currency": "EUR"}',
    ],
  ],
  [
    "a currency in words",
    (plan) => (plan.money.currency = "euro"),
    ['money.currency: "euro" is no currency code; allowed: three capital letters; write for example "EUR"'],
  ],
  [
    "price of nothing",
    (plan) => (plan.money.prices.skin = "1 EUR/kg"),
    [
      "money.prices.skin: 'skin' is not a product; allowed: 'carcass', 'blood', 'skins', 'viscera', 'trimmings', 'drip', 'condemned', 'bruised', 'late', 'dead on arrival'; did you mean 'skins'?",
    ],
  ],
  [
    "energy by the litre",
    (plan) => (plan.money.energy = "0.25 EUR/L"),
    [
      'money.energy: "0.25 EUR/L" is no price of an energy; allowed: a number of 0 or more, a three-letter currency code in capitals, then one of /J, /kJ, /Wh, /MJ, /kWh; write for example "0.5 EUR/kWh"',
    ],
  ],
  [
    "water that pays",
    (plan) => (plan.money.water = "-0.25 EUR/L"),
    [
      'money.water: "-0.25 EUR/L" is no price of a volume; allowed: a number of 0 or more, a three-letter currency code in capitals, then one of /mL, /L, /m3, /m³; write for example "0.5 EUR/m3"',
    ],
  ],
  [
    "overtime for less pay",
    (plan) => (plan.money.overtimeFactor = 0.5),
    ["money.overtimeFactor: 0.5 is too small; allowed: 1 or more"],
  ],
];

describe("what a plan says of money", () => {
  it.each(BAD)("tells of %s", (_, spoil, expected) => {
    expect(wholeFaults(spoil)).toEqual(expected);
  });
});
