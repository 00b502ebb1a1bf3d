import type { Plan, TimeLimit } from "../../sim/asked/plan/index.ts";

/** What simulated days of one plant come to: means by response, and the plan itself. */
export interface PlantDays {
  plan: Plan;
  mean(key: string): number;
  /** Sum of the means of all keys that match. */
  sum(keys: RegExp): number;
}

export interface PlantFigure {
  what: string;
  unit: string;
  decimals: number;
  of(days: PlantDays): number;
  /** What somebody published of rabbits on the same base: figures outside are marked. */
  range: readonly [number, number] | null;
  /** The published range in words with its source, or that none was found. */
  published: string;
}

const NONE = "no source found";
const share = (what: string, keys: RegExp, range: PlantFigure["range"] = null, published = NONE): PlantFigure => ({
  what: `${what}, of live weight`,
  unit: "%",
  decimals: 1,
  of: (days) => (100 * days.sum(keys)) / days.mean("liveKg"),
  range,
  published,
});
const headsHung = (days: PlantDays): number =>
  days.mean("carcasses") + days.mean("removed.dead on arrival") + days.mean("removed.condemned");

export const YIELDS: readonly PlantFigure[] = [
  {
    what: "carcass, cold, of the live weight of the same heads",
    unit: "%",
    decimals: 1,
    of: (days) => 100 * days.mean("dressingPercentage"),
    range: [50.8, 59],
    published:
      "50.8 to 51.5 without head, 55.8 to 55.9 with it (Kuzelov and Atanasova 2011); up to 59 in trade (La Semaine Vétérinaire 1592, 2014)",
  },
  share("blood", /^byProduct\.blood$/),
  share("skin", /^byProduct\.skins$/),
  share("viscera", /^byProduct\.viscera$/),
  share(
    "paws and head",
    /^byProduct\..*(paws|head)/,
    [8, 8.6],
    "8.0 to 8.6: paws 3.6 (Ouhayoun 1989, as quoted in theses), head 4.4 to 5.0 (carcass with it less without: Kuzelov and Atanasova 2011)",
  ),
  {
    what: "drip, of the carcass before chilling",
    unit: "%",
    decimals: 1,
    of: (days) => (100 * days.sum(/^byProduct\.drip$/)) / (days.mean("carcassKg") + days.sum(/^byProduct\.drip$/)),
    range: [1, 2.5],
    published: "1 to 2 (La Semaine Vétérinaire 1592, 2014); 2.5 in 24 h at 4 °C (Ouhayoun 1989, as quoted in theses)",
  },
  {
    what: "dead on arrival, of heads",
    unit: "%",
    decimals: 2,
    of: (days) => (100 * days.mean("removed.dead on arrival")) / headsHung(days),
    range: [0.08, 0.19],
    published:
      "0.08 (north-east Italy, 6,411 batches); 0.09 (Petracci and others 2010); 0.19 (Czech Republic, Anim. Sci. J. 89, 2018)",
  },
  {
    what: "condemned, of heads",
    unit: "%",
    decimals: 2,
    of: (days) => (100 * days.mean("removed.condemned")) / headsHung(days),
    range: [0.47, 0.54],
    published:
      "0.54, young animals (Italy 2003 to 2017, Conficoni and others); 0.48 with lesions (Poland, Med. Weter. 75, 2019)",
  },
];

export const USES: readonly PlantFigure[] = [
  {
    what: "electricity and heat for a tonne of carcass",
    unit: "kWh",
    decimals: 0,
    of: (days) => days.mean("energyPerTonne"),
    range: null,
    published: `${NONE} for rabbits; for chickens 170 to 490 (Decision (EU) 2023/2749, from memory): another animal`,
  },
  {
    what: "fresh water for a tonne of carcass",
    unit: "m³",
    decimals: 2,
    of: (days) => days.mean("waterPerTonne"),
    range: null,
    published: `${NONE} for rabbits; in France at most 6 (order of 31 March 2025, article 5.5), cleaning included`,
  },
  {
    what: "cost of a kilogram of carcass with building, fees, overhead and loan",
    unit: "EUR",
    decimals: 2,
    of: (days) => days.mean("fullCostPerKg"),
    range: null,
    published: NONE,
  },
  {
    what: "processing cost of a kilogram of carcass",
    unit: "EUR",
    decimals: 2,
    of: (days) => days.mean("costPerKg"),
    range: null,
    published: NONE,
  },
  {
    what: "people of all crews and shifts for 1,000 carcasses a day",
    unit: "people",
    decimals: 1,
    of: (days) => (1000 * crewPeople(days.plan)) / days.mean("carcasses"),
    range: null,
    published: NONE,
  },
  {
    what: "paid person-hours for 1,000 carcasses",
    unit: "h",
    decimals: 1,
    of: (days) => (1000 * days.mean("paidHours")) / days.mean("carcasses"),
    range: null,
    published: NONE,
  },
];

function crewPeople({ crews }: Plan): number {
  return crews.flatMap(({ people }) => people).reduce((sum, people) => sum + people, 0);
}

/** What somebody published of a limit's number; a limit with another name is a house rule. */
export function publishedLimit({ name }: TimeLimit): string {
  return LIMITS[name] ?? NONE;
}

const LIMITS: Record<string, string> = {
  "stun to stick":
    "10 s lying, 20 s hanging (Germany, Tierschutz-Schlachtverordnung 2012, Anlage 2); under 10 s for rabbits (EFSA 2020, from a copy)",
  "stick to evisceration": `${NONE}; “without undue delay” (Regulation (EC) 853/2004, Annex III, Section II)`,
  "kill to chill": `${NONE}; “as soon as possible” (Regulation (EC) 853/2004, Annex III, Section II)`,
  "arrival to stunning":
    "0 to 7 h seen, usually over 1 h (Spain, Buil and others 2004): what is done, not what is good",
};
