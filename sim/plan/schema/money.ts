import { z } from "zod";
import {
  energy,
  MONEY_EXAMPLE,
  MONEY_PATTERN,
  MONEY_RATE_EXAMPLE,
  MONEY_RATE_PATTERN,
  mass,
  moneyPerExample,
  moneyPerPattern,
  readMoney,
  readMoneyPer,
  readMoneyRate,
  type Sign,
  type UnitFamily,
  volume,
} from "../../units/index.ts";
import { readCurrency } from "../readCurrency.ts";
import { readBy } from "./readBy.ts";
import { record } from "./record.ts";

const LEAST_OVERTIME = 1;
const MOST_OVERTIME = 10;

/** Prices. That all money of the plan is in one currency is a rule. */
export function money() {
  return record({
    currency: readBy(readCurrency, { type: "string", pattern: "^[A-Z]{3}$", examples: ["EUR"] }).describe(
      "Three-letter code of the one currency of this plan.",
    ),
    water: price(volume, "of 0 or more").nullable().default(null).describe("Price of water. Default: null, free."),
    wasteWater: price(volume, "of 0 or more")
      .nullable()
      .default(null)
      .describe("Price of getting rid of the water used. Default: null, free."),
    energy: price(energy, "of 0 or more").nullable().default(null).describe("Price of energy. Default: null, free."),
    fuel: price(energy, "of 0 or more")
      .nullable()
      .default(null)
      .describe("Price of what heats water. Default: null, free."),
    overtimeFactor: z
      .number()
      .min(LEAST_OVERTIME)
      .max(MOST_OVERTIME)
      .default(LEAST_OVERTIME)
      .describe("Pay after the last shift is multiplied by this. Default: 1."),
    livePrice: price(mass, "of 0 or more")
      .nullable()
      .default(null)
      .describe("Price of live animals. Default: null, not reckoned."),
    prices: z
      .record(z.string(), price(mass, "of either sign"))
      .prefault({})
      .describe(
        'What is earned, by "carcass", by-product or way out (say "condemned"); negative for what costs money. Default: none.',
      ),
  });
}

/** Money for one unit of something, per SI unit of the family. */
function price(family: UnitFamily, sign: Sign) {
  return readBy((written) => readMoneyPer(family, sign, written), {
    type: "string",
    pattern: moneyPerPattern(family, sign),
    examples: [moneyPerExample(family)],
  });
}

/** Money per time. */
export function pay() {
  return readBy(readMoneyRate, { type: "string", pattern: MONEY_RATE_PATTERN, examples: [MONEY_RATE_EXAMPLE] });
}

/** An amount of money. */
export function amount() {
  return readBy(readMoney, { type: "string", pattern: MONEY_PATTERN, examples: [MONEY_EXAMPLE] });
}
