/**
 * Ten small questions whose every allowed design can be simulated: places, people and budgets; throughput, margin and
 * overtime; with and without a limit. All invented, and small so that full enumeration is quick.
 */

const DAY = { shifts: [{ name: "day", from: "06:00", to: "06:20" }] };
const MORE_TO_DO = { name: "invented", notes: "Invented for tests." };

type Json = Record<string, unknown>;

function saturated(heads: number) {
  return { saturated: { heads } };
}

function arriving(heads: number) {
  return { stream: { interarrival: "2 s", heads } };
}

function station(name: string, cycle: unknown, more: Json = {}): Json {
  return { name, kind: "station", cycle, ...more };
}

function exponential(mean: number): Json {
  return { exponential: { mean: `${mean} s` } };
}

function lognormal(mean: number, cv: number): Json {
  return { lognormal: { mean: `${mean} s`, cv } };
}

function plan(supply: Json, line: Json[], more: Json = {}): Json {
  return { ...MORE_TO_DO, day: DAY, supply, line, ...more };
}

function breaks(uptime: number, repair: number): Json {
  const times = { uptime: exponential(uptime), repair: exponential(repair) };
  return { breakdowns: [{ name: "stop", ...times }] };
}

const NAMES = ["hanging", "stunning", "sticking", "skinning", "evisceration", "inspection"];

/** A row of machines, one position each. */
function machines(cycles: unknown[], more: Json[] = []): Json[] {
  return cycles.map((cycle, index) => station(NAMES[index]!, cycle, { buffer: 1, ...more[index] }));
}

function manual(name: string, cycle: unknown, positions = 5): Json {
  return station(name, cycle, { buffer: 4, positions, crew: name });
}

function crews(people: Record<string, number>, pay: string | null = null): Json[] {
  return Object.entries(people).map(([name, count]) => ({ name, people: count, pay }));
}

const MONEY = { currency: "EUR", overtimeFactor: 1.5, prices: { carcass: "4 EUR/kg" } };

function places(total: number, names: string[], to = total): Json {
  return { places: { total, least: total, among: names.map((each) => ({ station: each, to })) } };
}

function people(total: number, names: string[], to: number, least = total): Json {
  return { people: { total, least, among: names.map((crew) => ({ crew, from: 1, to })) } };
}

const OFFER = { life: 5 };

function budget(total: number, options: Json[]): Json {
  return { budget: { total: `${total} EUR`, options: options.map((option) => ({ ...OFFER, ...option })) } };
}

function quicker(name: string, mean: number, price: number): Json {
  return { name: `quicker ${name}`, set: { [`line.${name}.cycle`]: exponential(mean) }, price: `${price} EUR` };
}

function morePlaces(name: string, buffer: number, price: number): Json {
  return { name: `places ${name}`, set: { [`line.${name}.buffer`]: buffer }, price: `${price} EUR` };
}

const SEARCH = { days: 4, designs: 20, finalists: 4, curve: 0 };
const SHORT = { firstStage: 6, atMost: 20, search: SEARCH };

const ODD = machines([5, 6, 5, 6, 5].map(exponential));
const CREWED = ["hanging", "skinning", "evisceration", "inspection"];
const CREWED_LINE = [
  manual("hanging", lognormal(9, 0.3)),
  manual("skinning", lognormal(22, 0.3)),
  manual("evisceration", lognormal(16, 0.4)),
  manual("inspection", lognormal(12, 0.2)),
];

export interface ImproveCase {
  title: string;
  json: Json;
}

export const IMPROVE_CASES: ImproveCase[] = [
  {
    title: "places in an even exponential line",
    json: {
      plan: plan(saturated(150), machines([6, 6, 6, 6].map(exponential))),
      goal: "throughput",
      allocate: places(15, ["stunning", "sticking", "skinning"]),
    },
  },
  {
    title: "places around a slow station",
    json: {
      plan: plan(saturated(150), machines([5, 5, 6.5, 5, 5].map(exponential))),
      goal: "throughput",
      allocate: places(8, ["stunning", "sticking", "skinning", "evisceration"]),
    },
  },
  {
    title: "places around a station that fails",
    json: {
      plan: plan(
        saturated(200),
        machines(
          [4, 4.2, 4, 4.4].map((mean) => lognormal(mean, 0.2)),
          [{}, {}, breaks(120, 40), {}],
        ),
      ),
      goal: "throughput",
      allocate: places(16, ["stunning", "sticking", "skinning"]),
    },
  },
  {
    title: "places against overtime",
    json: {
      plan: plan(arriving(160), machines([6, 7, 6, 7, 6].map((mean) => lognormal(mean, 0.8)))),
      goal: "overtime",
      difference: "30 s",
      allocate: places(9, ["stunning", "sticking", "skinning", "evisceration"]),
    },
  },
  {
    title: "places with a time limit to keep",
    json: {
      plan: plan(saturated(150), machines([5, 5.5, 6, 5.5].map(exponential)), {
        limits: [
          {
            name: "stun to skinning",
            from: "end of stunning",
            to: "start of skinning",
            max: "80 s",
            source: "invented",
          },
        ],
      }),
      goal: "throughput",
      allocate: {
        places: {
          total: 14,
          least: 13,
          among: [
            { station: "stunning", to: 12 },
            { station: "sticking", to: 12 },
            { station: "skinning", to: 12 },
          ],
        },
      },
      limits: [{ limit: "stun to skinning", beyond: "15 %" }],
    },
  },
  {
    title: "people for throughput",
    json: {
      plan: plan(saturated(120), CREWED_LINE, {
        crews: crews({ hanging: 3, skinning: 3, evisceration: 3, inspection: 3 }),
      }),
      goal: "throughput",
      difference: 10,
      allocate: people(13, CREWED, 6),
    },
  },
  {
    title: "people for margin, fewer than there are allowed",
    json: {
      plan: plan(arriving(150), CREWED_LINE, {
        crews: crews({ hanging: 3, skinning: 3, evisceration: 3, inspection: 3 }, "60 EUR/h"),
        money: MONEY,
      }),
      goal: "margin",
      difference: 4,
      allocate: people(11, CREWED, 4, 8),
    },
  },
  {
    title: "people against overtime, one crew at two stations",
    json: {
      plan: plan(
        arriving(230),
        [
          manual("hanging", lognormal(9, 0.3)),
          { ...manual("skinning", lognormal(18, 0.3)), crew: "hanging" },
          manual("evisceration", lognormal(16, 0.4)),
          manual("inspection", lognormal(12, 0.2)),
          manual("weighing", lognormal(7, 0.2)),
        ],
        { crews: crews({ hanging: 4, evisceration: 2, inspection: 2, weighing: 2 }) },
      ),
      goal: "overtime",
      difference: "30 s",
      allocate: people(11, ["hanging", "evisceration", "inspection", "weighing"], 7),
    },
  },
  {
    title: "a budget for throughput",
    json: {
      plan: plan(saturated(150), ODD),
      goal: "throughput",
      difference: 10,
      allocate: budget(120, [
        quicker("hanging", 4, 40),
        quicker("stunning", 4.5, 45),
        quicker("sticking", 4, 40),
        quicker("skinning", 4.5, 45),
        morePlaces("stunning", 6, 12),
        morePlaces("sticking", 6, 14),
        morePlaces("skinning", 6, 12),
        morePlaces("evisceration", 6, 10),
      ]),
    },
  },
  {
    title: "a budget for margin",
    json: {
      plan: plan(saturated(250), ODD, { crews: crews({ everyone: 6 }, "20 EUR/h"), money: MONEY }),
      goal: "margin",
      interest: "5 %",
      daysPerYear: 250,
      difference: 4,
      allocate: budget(70_000, [
        quicker("hanging", 4, 20_000),
        quicker("stunning", 4.5, 25_000),
        quicker("sticking", 4, 20_000),
        quicker("skinning", 4.5, 25_000),
        morePlaces("stunning", 6, 4000),
        morePlaces("sticking", 6, 5000),
        morePlaces("skinning", 6, 4000),
        morePlaces("evisceration", 6, 20_000),
      ]),
    },
  },
].map(({ title, json }) => ({ title, json: { name: title, seed: "2026", ...SHORT, ...json } }));

/** One of the questions as a file with some keys changed. */
export function improveFileOf(changes: Json = {}, index = 0): Json {
  return { ...IMPROVE_CASES[index]!.json, ...changes };
}
