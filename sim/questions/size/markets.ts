import type { Fault } from "../../asked/plan/index.ts";
import { formatPath, listWords, nearestWords } from "../../asked/plan/index.ts";
import { meanOf } from "../../maths/random/index.ts";
import type { DemandFile } from "./schema/demandFile.ts";
import { USUAL_HANDLING } from "./usualHandling.ts";

type Animals = Pick<DemandFile["animals"], "liveWeight" | "yield" | "deadOnArrival" | "condemned">;
type Quantity = Pick<DemandFile["week"], "heads" | "carcasses" | "carcassMass">;

/** One market as it is reckoned with: live heads of its mean week in the first year. */
export interface Market {
  name: string;
  product: string;
  headsPerWeek: number;
  /** Of each month over the mean month; mean 1. */
  season: number[];
  growth: number;
  /** Of a kilogram of carcass; null where the money's own price stands. */
  pricePerKg: number | null;
}

export const MONTHS_OF_YEAR = 12;

/** Live heads that a quantity takes: carcasses / (1 - condemned) / (1 - dead on arrival), mass by the mean carcass. */
export function headsOf({ heads, carcasses, carcassMass }: Quantity, animals: Animals): number {
  if (heads !== undefined) return heads;
  const number = carcasses ?? carcassMass! / (meanOf(animals.liveWeight) * animals.yield);
  return number / ((1 - animals.deadOnArrival) * (1 - animals.condemned));
}

/** The markets of a demand; of one without any, its week, every month and year alike. */
export function marketsOf({
  markets,
  week,
  animals,
  name,
}: Pick<DemandFile, "markets" | "week" | "animals" | "name">): Market[] {
  const flat = new Array<number>(MONTHS_OF_YEAR).fill(1);
  if (markets.length === 0) {
    return [
      { name, product: "carcasses", headsPerWeek: headsOf(week, animals), season: flat, growth: 0, pricePerKg: null },
    ];
  }
  return markets.map((market) => ({
    name: market.name,
    product: market.product,
    headsPerWeek: headsOf(market, animals),
    season: market.season === undefined ? flat : overMean(market.season),
    growth: market.growth,
    pricePerKg: market.price?.amount ?? null,
  }));
}

function overMean(season: readonly number[]): number[] {
  const mean = season.reduce((sum, each) => sum + each, 0) / season.length;
  return season.map((each) => each / mean);
}

/** Live heads of a mean week of this month (0 to 11) in this year (from 1): quantity x season x (1 + growth)^(year - 1). */
export function headsOfWeek(markets: readonly Market[], year: number, month: number): number {
  return markets.reduce(
    (sum, { headsPerWeek, season, growth }) => sum + headsPerWeek * season[month]! * (1 + growth) ** (year - 1),
    0,
  );
}

/** The busiest month's week of a year. */
export function busiestWeek(markets: readonly Market[], year: number): number {
  return Math.max(...Array.from({ length: MONTHS_OF_YEAR }, (_, month) => headsOfWeek(markets, year, month)));
}

/** Heads a week that a plant with markets is sized for: the busiest month of the year it is sized for, and the spare rate. */
export function sizedWeek(file: DemandFile): number {
  return busiestWeek(marketsOf(file), file.years.sizedFor) * (1 + file.years.spare);
}

const QUANTITIES = ["heads", "carcasses", "carcassMass"] as const;

/** What the parts of the business say of each other and of the plant; `steps`: the names of its steps. */
export function businessFaults(file: DemandFile, written: unknown, steps: readonly string[]): Fault[] {
  return [
    ...marketFaults(file),
    ...yearFaults(file, written),
    ...priceFaults(file, steps),
    ...currencyFaults(file),
    ...hourFaults(file),
  ];
}

function marketFaults({ markets }: DemandFile): Fault[] {
  const names = markets.map(({ name }) => name);
  return markets.flatMap((market, index): Fault[] => {
    const keys = QUANTITIES.filter((key) => market[key] !== undefined);
    const twice = names.indexOf(market.name) !== index;
    const nothing = market.season?.every((each) => each === 0) ?? false;
    const at = (...rest: string[]) => formatPath(["markets", index, ...rest]);
    return [
      ...(keys.length === 1
        ? []
        : [
            {
              path: at(),
              found: keys.length === 0 ? "no quantity" : listWords(keys),
              allowed: 'exactly one of "heads", "carcasses" and "carcassMass"',
              remedy: keys.length === 0 ? 'write for example "carcassMass": "9 t"' : "keep one",
            },
          ]),
      ...(twice
        ? [
            {
              path: at("name"),
              found: `'${market.name}' is there already`,
              allowed: "",
              remedy: "give it another name",
            },
          ]
        : []),
      ...(nothing
        ? [{ path: at("season"), found: "every month is 0", allowed: "one month above 0", remedy: "raise one" }]
        : []),
    ];
  });
}

/** The year and the spare rate are for markets: a week is sized for as it is written. */
function yearFaults({ markets, years, week, money }: DemandFile, written: unknown): Fault[] {
  const own = ((written as { years?: Record<string, unknown> }).years ?? {}) as Record<string, unknown>;
  const alone =
    markets.length > 0
      ? []
      : ["sizedFor", "spare"].flatMap((key) =>
          own[key] === undefined
            ? []
            : [
                {
                  path: formatPath(["years", key]),
                  found: "there are no markets, and a week is sized for as it is written",
                  allowed: "",
                  remedy: 'delete it, or write the quantity under "markets"',
                },
              ],
        );
  const days = money?.plantCosts?.daysPerYear;
  const differ = days !== undefined && own.weeks !== undefined && days !== years.weeks * week.days;
  return [
    ...alone,
    ...(differ
      ? [
          {
            path: "years.weeks",
            found: `${years.weeks} weeks of ${week.days} days, but money.plantCosts.daysPerYear is ${days}`,
            allowed: `${days} days a year`,
            remedy: "delete one of the two",
          },
        ]
      : []),
  ];
}

function priceFaults({ capital, money }: DemandFile, steps: readonly string[]): Fault[] {
  if (capital === null) return [];
  const known = [...steps, ...new Set(Object.values(USUAL_HANDLING).flatMap((way) => Object.keys(way)))];
  const unknown = Object.keys(capital.stations).filter((name) => !known.includes(name));
  const twice = (["building", "loan"] as const).filter((key) => (money?.plantCosts?.[key] ?? null) !== null);
  return [
    ...unknown.map((name) => ({
      path: formatPath(["capital", "stations", name]),
      found: `'${name}' is no step`,
      allowed: listWords(known),
      remedy: nearestWords(name, known, "name one of these"),
    })),
    ...twice.map((key) => ({
      path: formatPath(["money", "plantCosts", key]),
      found: `the demand has "capital", from which the ${key} of each kind of plant follows`,
      allowed: "",
      remedy: 'delete it here, or "capital"',
    })),
  ];
}

/** Every amount is in the currency of the money; where there is none yet, it is asked for. */
function currencyFaults({ money, markets, capital }: DemandFile): Fault[] {
  const amounts: [string, { currency: string } | undefined][] = [
    ...markets.map(({ price }, index): [string, typeof price] => [formatPath(["markets", index, "price"]), price]),
    ...(capital === null
      ? []
      : [
          ...(["stations", "other"] as const).flatMap((key) =>
            Object.entries(capital[key]).map(([name, price]): [string, typeof price] => [
              formatPath(["capital", key, name]),
              price,
            ]),
          ),
          ...(["crate", "vessel", "floor", "power"] as const).map((key): [string, { currency: string } | undefined] => [
            formatPath(["capital", key]),
            capital[key],
          ]),
        ]),
  ];
  const said = amounts.flatMap(([path, amount]) => (amount === undefined ? [] : [{ path, currency: amount.currency }]));
  if (money === null) {
    const [first] = said;
    return first === undefined
      ? []
      : [
          {
            path: "money",
            found: `missing, but ${first.path} speaks of money`,
            allowed: "an object with the currency",
            remedy: `add "money": {"currency": "${first.currency}"}`,
          },
        ];
  }
  return said
    .filter(({ currency }) => currency !== money.currency)
    .map(({ path, currency }) => ({
      path,
      found: `${currency}, but the demand's money is in ${money.currency}`,
      allowed: `amounts in ${money.currency}`,
      remedy: "convert it",
    }));
}

/** Shifts lie in the hours of the site; cleaning comes after the last. */
function hourFaults({ available: site, day, compare }: DemandFile): Fault[] {
  const shifts = [
    ...day.shifts.map((shift, index) => ({ shift, path: formatPath(["day", "shifts", index]) })),
    ...(compare.secondShift === undefined ? [] : [{ shift: compare.secondShift, path: "compare.secondShift" }]),
  ];
  return shifts.flatMap(({ shift, path }) => {
    const early = site.from !== undefined && shift.from < site.from;
    const late = site.to !== undefined && shift.to + day.cleaning > site.to;
    return early || late
      ? [
          {
            path,
            found: early ? "it begins before the site's hours" : "with the cleaning it ends after the site's hours",
            allowed: "",
            remedy: "move it, or available.from and available.to",
          },
        ]
      : [];
  });
}
