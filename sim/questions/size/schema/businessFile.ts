import { z } from "zod";
import {
  clock,
  freeText,
  moneyAmount,
  moneyPrice,
  name,
  quantity,
  quantityAboveZero,
  record,
  share,
  whole,
} from "../../../asked/plan/index.ts";
import { area, flow, mass, power, time, volume } from "../../../text/units/index.ts";
import { ALTERNATIVES } from "../alternatives.ts";
import { assumedBusiness } from "../assumedBusiness.ts";

const MAX_MARKETS = 50;
const MAX_HEADS = 10_000_000;
const MONTHS = 12;
const MAX_SEASON = 100;
const WEEKS_OF_YEAR = 53;
const MAX_YEARS = 40;
const MAX_BREAKS = 20;
const MAX_LEAVE = 30;

/** What a demand says of the business around the plant: markets and years, site, kinds to compare, prices, people, ranges. */
export function businessKeys() {
  return {
    markets: z
      .array(market())
      .max(MAX_MARKETS)
      .default([])
      .describe("Who buys; in place of the quantity of the week. Default: none."),
    years: years().prefault({}).describe("How long the plant has to do, and with what to spare."),
    available: available()
      .prefault({})
      .describe("What the site has. What is left out is told, and not held against anything."),
    compare: compare().prefault({}).describe("Kinds of plant that the dossier compares."),
    capital: capital()
      .nullable()
      .default(null)
      .describe("Prices of what is bought; without them capital is told as open. Default: null."),
    staff: staff().prefault({}).describe("People: absence, relief, learning."),
    ranges: ranges().prefault({}).describe("How far off the money may be: nineteen times of twenty within this share."),
  };
}

function market() {
  return record({
    name: name().describe("Name of the market."),
    product: freeText().default("carcasses").describe('What it buys, in words. Default: "carcasses".'),
    heads: whole(1, MAX_HEADS).optional().describe("Live heads in its mean week of the first year."),
    carcasses: whole(1, MAX_HEADS).optional().describe("Carcasses in that week."),
    carcassMass: quantityAboveZero(mass).optional().describe("Mass of the carcasses of that week."),
    season: z
      .array(z.number().min(0).max(MAX_SEASON))
      .length(MONTHS)
      .optional()
      .describe("January to December, each month over the others; only ratios count. Default: every month alike."),
    growth: share().prefault(0).describe("More every year. Default: none."),
    price: moneyPrice(mass, "of 0 or more")
      .optional()
      .describe("Of a kilogram of carcass. Default: that of the money."),
  });
}

function years() {
  return record({
    weeks: assumable("years.weeks", whole(1, WEEKS_OF_YEAR), "Working weeks a year."),
    looked: assumable("years.looked", whole(1, MAX_YEARS), "Years that are looked at."),
    sizedFor: assumable(
      "years.sizedFor",
      whole(1, MAX_YEARS),
      "The plant is sized for the busiest month of this year.",
    ),
    spare: assumable("years.spare", share(), "Spare rate beyond that."),
  });
}

function available() {
  return record({
    power: quantityAboveZero(power).optional().describe("Electricity that can be drawn at once."),
    water: quantityAboveZero(flow).optional().describe("Water that can be drawn at once."),
    waterPerDay: quantityAboveZero(volume).optional().describe("Water of a day."),
    drains: quantityAboveZero(volume).optional().describe("Waste water that the drains take in a day."),
    floor: quantityAboveZero(area).optional().describe("Floor there is, or may be built."),
    from: clock().optional().describe("Nobody may work before this time."),
    to: clock().optional().describe("Nobody may work after this time, cleaning included."),
  });
}

function compare() {
  return record({
    kinds: z
      .array(z.enum(ALTERNATIVES))
      .min(1)
      .max(ALTERNATIVES.length)
      .default([...ALTERNATIVES])
      .describe("Kinds of plant. Default: all."),
    secondShift: record({
      name: name().describe("Name of the shift."),
      from: clock().describe("Start of the shift."),
      to: clock().describe("End of the shift."),
      breaks: z
        .array(
          record({
            name: name().describe("Name of the break."),
            at: clock().describe("When it starts."),
            length: quantityAboveZero(time).describe("How long it lasts."),
          }),
        )
        .max(MAX_BREAKS)
        .default([])
        .describe("Its breaks. Default: none."),
    })
      .optional()
      .describe("Each kind is then sized for one shift and for two. Default: one."),
  });
}

function capital() {
  const price = moneyAmount;
  return record({
    stations: z
      .record(z.string(), price())
      .default({})
      .describe(
        "By step: the price of one position, its machine or its place of work; of bleeding and chilling that of one place.",
      ),
    crate: price().optional().describe("Of one crate."),
    vessel: price().optional().describe("Of one vessel for by-products."),
    floor: moneyPrice(area, "of 0 or more").optional().describe("Of a square metre of building."),
    power: moneyPrice(power, "of 0 or more").optional().describe("Of the electrical installation, by power connected."),
    other: z
      .record(z.string(), price())
      .default({})
      .describe("What else is bought once, by name: planning, permits, connections, starting up."),
    life: assumable("capital.life", whole(1, MAX_YEARS), "Years of use of machines and crates."),
    buildingLife: assumable("capital.buildingLife", whole(1, 100), "Years of use of the building."),
    interest: assumable("capital.interest", share(), "Interest a year at which money is reckoned."),
    maintenance: assumable("capital.maintenance", share(), "Upkeep a year, as a share of what was bought."),
    loan: record({
      share: share().describe("Share of the capital that is borrowed."),
      interest: share().describe("A year."),
      years: whole(1, MAX_YEARS).describe("Until it is paid back, in equal payments every month."),
    })
      .optional()
      .describe("Default: none."),
  });
}

function staff() {
  return record({
    absence: assumable("staff.absence", share(), "Share of people who are ill or away on a day."),
    leave: assumable("staff.leave", whole(0, MAX_LEAVE), "Weeks of paid leave of a person a year."),
    enough: assumable("staff.enough", share(), "Share of days on which enough people are to come."),
    relief: assumable("staff.relief", quantity(time), "Time that each person is relieved in a shift, besides breaks."),
    learning: assumable("staff.learning", share(), "What the time for a head falls to with each doubling."),
    known: assumable("staff.known", whole(2, MAX_HEADS), "Heads done after which a person has the usual time."),
    done: assumable("staff.done", whole(1, MAX_HEADS), "Heads done in training, before the first day."),
  });
}

function ranges() {
  return record({
    volume: assumable("ranges.volume", share(), "Of what is sold."),
    price: assumable("ranges.price", share(), "Of the price of what is sold."),
    animals: assumable("ranges.animals", share(), "Of the price of animals."),
    pay: assumable("ranges.pay", share(), "Of pay."),
    energy: assumable("ranges.energy", share(), "Of the prices of energy and water."),
    capital: assumable("ranges.capital", share(), "Of what is bought."),
  });
}

/** A key that may be left out: the assumption made for this path then stands in its place, and the description says so. */
function assumable<Schema extends z.ZodType>(path: string, schema: Schema, words: string) {
  const value = assumedBusiness(path);
  return schema
    .prefault(value as z.input<Schema>)
    .describe(`${words} Assumed where it is left out: ${JSON.stringify(value)}.`);
}
