import { z } from "zod";
import { energy, mass, volume } from "../../../text/units/index.ts";
import { readCurrency } from "../readCurrency.ts";
import { price } from "./moneyText.ts";
import { plantCosts } from "./plantCosts.ts";
import { readBy } from "./readBy.ts";
import { record } from "./record.ts";

const MIN_OVERTIME = 1;
const MAX_OVERTIME = 10;

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
      .min(MIN_OVERTIME)
      .max(MAX_OVERTIME)
      .default(MIN_OVERTIME)
      .describe("Pay after the last shift is multiplied by this. Default: 1."),
    livePrice: price(mass, "of 0 or more")
      .nullable()
      .default(null)
      .describe("Price of live animals. Default: null, not reckoned."),
    plantCosts: plantCosts()
      .nullable()
      .default(null)
      .describe("Building, packaging, inspection, waste, overhead, maintenance, loan. Default: null, not reckoned."),
    prices: z
      .record(z.string(), price(mass, "of either sign"))
      .prefault({})
      .describe(
        'What is earned, by "carcass", by-product or way out (say "condemned"); negative for what costs money. Default: none.',
      ),
  });
}
