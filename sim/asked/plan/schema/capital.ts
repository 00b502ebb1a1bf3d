import { z } from "zod";
import { amount } from "./moneyText.ts";
import { record } from "./record.ts";
import { whole } from "./whole.ts";

const MAX_YEARS = 100;
const DAYS_OF_YEAR = 366;

/** What a machine costs and how long it lasts. */
export function capital() {
  return record({
    price: amount().describe("Purchase price."),
    life: z.number().gt(0).max(MAX_YEARS).describe("Years of use."),
    daysPerYear: whole(1, DAYS_OF_YEAR).describe("Working days in a year."),
  })
    .nullable()
    .default(null)
    .describe("Purchase, charged in equal parts to every working day. Default: null, none charged.");
}
