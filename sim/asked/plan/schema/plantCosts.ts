import { z } from "zod";
import { mass } from "../../../text/units/index.ts";
import { amount, pay, price } from "./moneyText.ts";
import { share } from "./readBy.ts";
import { record } from "./record.ts";
import { whole } from "./whole.ts";

const MAX_YEARS = 100;
const DAYS_OF_YEAR = 366;
const MAX_PAYMENTS = 366;

/** What a plant costs beside work, water, energy, machines and animals. No defaults: none of it was found in print. */
export function plantCosts() {
  return record({
    daysPerYear: whole(1, DAYS_OF_YEAR).describe("Working days that share what is paid by the year."),
    building: record({
      price: amount().describe("Building and land improvement, or its value."),
      life: z.number().gt(0).max(MAX_YEARS).describe("Years of use."),
    })
      .nullable()
      .default(null)
      .describe("Charged in equal parts to every working day. Default: null, none."),
    packaging: amount().nullable().default(null).describe("For each carcass that goes out. Default: null, none."),
    inspection: record({
      perHead: amount()
        .nullable()
        .default(null)
        .describe(
          "Fee for each head hung. Regulation (EU) 2017/625, Annex IV: 0.005 EUR a rabbit, where the state does not charge its cost. Default: null.",
        ),
      perHour: pay().nullable().default(null).describe("Fee by the hour of work. Default: null."),
    })
      .prefault({})
      .describe("Official inspection. Default: none."),
    waste: price(mass, "of 0 or more")
      .nullable()
      .default(null)
      .describe('Getting rid of by-products and heads that "prices" does not name. Default: null, none.'),
    overheadPerYear: amount()
      .nullable()
      .default(null)
      .describe("Office, insurance, taxes, cleaning agents. Default: null."),
    maintenance: share()
      .prefault("0 %")
      .describe(
        "A year, of the price of machines and building; 2 to 4 % is common practice, no source. Default: none.",
      ),
    loan: record({
      amount: amount().describe("Borrowed."),
      interest: share().describe("A year."),
      years: z.number().gt(0).max(MAX_YEARS).describe("Until it is paid back."),
      paymentsPerYear: whole(1, MAX_PAYMENTS).default(12).describe("Equal payments in a year. Default: 12."),
    })
      .nullable()
      .default(null)
      .describe(
        "Its interest is a cost; what is paid back is not, since prices are charged over the life. Default: null.",
      ),
  });
}
