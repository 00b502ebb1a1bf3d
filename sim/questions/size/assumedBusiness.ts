import type { Assumption } from "./assumed.ts";

const OWN = "a figure to begin with; replace it by your own";

function guess(path: string, what: string, value: unknown, note = OWN): Assumption {
  return { path, what, value, source: "invented", note };
}

/** What is taken of the business where a demand leaves it out; the plant itself is sized from `ASSUMPTIONS` alone. */
export const BUSINESS_ASSUMPTIONS: readonly Assumption[] = [
  guess("years.weeks", "working weeks a year", 50),
  guess("years.looked", "years that are looked at", 10),
  guess("years.sizedFor", "year whose busiest month the plant is sized for", 3, "with markets alone"),
  guess("years.spare", "spare rate beyond that", "10 %", "with markets alone"),
  guess("capital.life", "years of use of machines and crates", 12),
  guess("capital.buildingLife", "years of use of the building", 25),
  guess("capital.interest", "interest a year at which money is reckoned", "6 %"),
  {
    ...guess("capital.maintenance", "upkeep a year, share of what was bought", "3 %"),
    source: "common practice",
    note: "2 to 4 % is usual",
  },
  guess("staff.absence", "share of people who are ill or away on a day", "6 %", "no readable figure for such plants"),
  {
    ...guess("staff.leave", "paid leave of a person a year, weeks", 4),
    source: "published",
    note: "Directive 2003/88/EC, Article 7: at least four weeks; the law at the site decides",
  },
  guess("staff.enough", "share of days on which enough people are to come", "95 %"),
  guess("staff.relief", "time that each person is relieved in a shift, besides breaks", "15 min"),
  {
    ...guess("staff.learning", "what the time for a head falls to with each doubling of the heads done", "90 %"),
    source: "common practice",
    note: "85 to 95 % is usual for manual work; Wright 1936, read for units",
  },
  guess("staff.known", "heads done after which a person has the usual time", 40_000),
  guess("staff.done", "heads done in training, before the first day", 400),
  guess("ranges.volume", "what is sold", "15 %"),
  guess("ranges.price", "price of what is sold", "8 %"),
  guess("ranges.animals", "price of animals", "8 %"),
  guess("ranges.pay", "pay", "5 %"),
  guess("ranges.energy", "prices of energy and water", "30 %"),
  guess("ranges.capital", "what is bought", "20 %"),
];

const BY_PATH = new Map(BUSINESS_ASSUMPTIONS.map((assumption) => [assumption.path, assumption]));

/** The value that stands for this path of the business where the demand gives none. */
export function assumedBusiness(path: string): unknown {
  const found = BY_PATH.get(path);
  if (found === undefined) throw new Error(`assumedBusiness: nothing is assumed for "${path}"`);
  return found.value;
}
