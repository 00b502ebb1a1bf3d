import { beforeAll, describe, expect, it } from "vitest";
import { readPlan } from "../../../../sim/asked/plan/index.ts";
import type { StudyResults } from "../../../../sim/days/results/index.ts";
import { uniformStream } from "../../../../sim/maths/random/index.ts";
import { type Dossier, firstWeeksPlan, type SizedKind } from "../../../../sim/questions/dossier/index.ts";
import { dossierDocuments, dossierDrawing, dossierTables, ownerLines } from "../../../../viz/index.ts";
import { NO_FILES } from "../../../support/demands.ts";
import { businessDemand, dossierFor } from "../../../support/dossiers.ts";

/**
 * Every figure of the owner's table, worked out again from the demand, the days' own values and the drawn plant by formulas written down here,
 * without the code that makes the dossier. One dossier of two kinds and two days for the whole file.
 */

let dossier: Dossier;
let kinds: SizedKind[];
let results: StudyResults;

beforeAll(async () => {
  ({ dossier, kinds, results } = await dossierFor(businessDemand()));
}, 60_000);

const values = (at: number, key: string): number[] => results.variants[at]!.values[key] as number[];
const mean = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0) / list.length;
/** Student's 97.5 % quantile with one degree of freedom. */
const T1 = 12.7062047364;
const halfWidth = ([a, b]: readonly number[]): number => (T1 * (Math.abs(a! - b!) / Math.SQRT2)) / Math.SQRT2;

const each = (check: (at: number) => void) => {
  expect(dossier.kinds).toHaveLength(2);
  for (const at of [0, 1]) check(at);
};

const LIVE = 2.5;
const YIELD = 0.525;
const LOST = (1 - 0.0015) * (1 - 0.008);
const WEEKS = 48;
const DAYS = 5 * WEEKS;
/** Heads of a mean week of the first year, by market. */
const SHOPS = 1600 / (LIVE * YIELD) / LOST;
const KITCHENS = 700 / LOST;
const SEASON = [...new Array<number>(11).fill(1), 1.6].map((month) => month / (12.6 / 12));
const weekOf = (year: number, month: number) => SHOPS * SEASON[month]! * 1.06 ** (year - 1) + KITCHENS;

describe("a figure of the owner's table", () => {
  it("people: those of the crews; employed by relief, absence and leave, the binomial summed term by term", () => {
    each((at) => {
      const { row, kind } = dossier.kinds[at]!;
      const posts = kind.design.crews.reduce((sum, { people }) => sum + people, 0);
      const duty = Math.ceil(posts / (1 - 15 / 360));
      const enough = (due: number) => {
        let [sum, term] = [0, 0.94 ** due];
        for (let away = 0; away <= due - duty; away++) {
          sum += term;
          term *= ((due - away) / (away + 1)) * (0.06 / 0.94);
        }
        return sum;
      };
      let due = duty;
      while (enough(due) < 0.95) due++;
      expect(row.people).toBe(posts);
      // Four weeks of leave, and four without work.
      expect(row.employed).toBe(due);
    });
  });

  it("floor: the building as it is drawn; power and water: what the connections add up to", () => {
    each((at) => {
      const { row, built } = dossier.kinds[at]!;
      const { width, depth } = built.layout.building;
      expect(row.squareMetres).toBeCloseTo(width * depth, 1);
      const { coldLitresPerMinute, hotLitresPerMinute, kilowatts } = built.connections.profile;
      const litres = [...coldLitresPerMinute, ...hotLitresPerMinute].reduce((sum, flow) => sum + flow, 0);
      expect(row.cubicMetres / (litres / 1000)).toBeCloseTo(1, 2);
      const windows = kilowatts.slice(4).map((_, from) => mean(kilowatts.slice(from, from + 5)));
      expect(row.kilowatts).toBeCloseTo(Math.max(...windows) * 1.15, 6);
    });
  });

  it("capital: price x number of everything in the plan, the drawing and the connections", () => {
    each((at) => {
      const { row, kind, built } = dossier.kinds[at]!;
      const plan = kind.design.plan as {
        line: { name: string; positions?: number; places?: number }[];
        liveHandling: Record<string, { positions?: number }> & { fleet: { crates: number } };
        vessels: { capacity: string }[];
      };
      const named = [
        ...["unloading", "feeding", "washing", "restacking", "hanging", "stunning", "sticking", "hind-leg cutting"],
        ...["skinning", "four-leg cutting", "evisceration", "inspection", "trim"],
      ];
      const price = (name: string) => 3000 + 1000 * named.indexOf(name);
      const line = plan.line.reduce(
        (sum, stage) => sum + (stage.positions ?? 0) * price(stage.name) + (stage.places ?? 0) * 100,
        0,
      );
      const crates = ["unloading", "feeding", "washing", "restacking"].reduce(
        (sum, step) => sum + plan.liveHandling[step]!.positions! * price(step),
        0,
      );
      const vessels = plan.vessels.reduce((sum, { capacity }) => sum + Number.parseFloat(capacity) / 600, 0);
      const { width, depth } = built.layout.building;
      const all = line + crates + plan.liveHandling.fleet.crates * 20 + vessels * 2000;
      expect(row.capital! / (all + width * depth * 900 + row.kilowatts * 300 + 50_000)).toBeCloseTo(1, 4);
      expect(row.open).toEqual([]);
    });
  });

  it("overtime and limits: means of the simulated days", () => {
    each((at) => {
      const { row } = dossier.kinds[at]!;
      expect(row.overtimeSeconds.mean).toBeCloseTo(mean(values(at, "overtime")), 9);
      for (const { name, outside } of row.limits) expect(outside).toBeCloseTo(mean(values(at, `beyond.${name}`)), 12);
      expect(row.limits.map(({ name }) => name)).toContain("stun to stick");
    });
  });

  it("spare rate, with its range: heads by the pace of the pressed days over those of the busiest day", () => {
    each((at) => {
      const { row, kind } = dossier.kinds[at]!;
      const { headsPerDay } = kind.design.rate;
      const busiest = Math.max(...SEASON.map((_, month) => weekOf(2, month))) * 1.05;
      expect(headsPerDay).toBe(Math.ceil((busiest / 5) * 1.1));
      const shiftStart = 6 * 3600 - results.variants[at]!.day.startClockSeconds;
      const { preStartSeconds, emptyingSeconds, lastHeadSeconds } = kind.design.rate;
      const other = preStartSeconds + 20 * 60 + emptyingSeconds + lastHeadSeconds;
      const spares = values(at + 2, "finish").map((finish, day) => {
        const perSecond = values(at + 2, "carcasses")[day]! / LOST / (finish - shiftStart - other);
        return (perSecond * (6 * 3600 - other)) / headsPerDay - 1;
      });
      expect(row.spare.mean).toBeCloseTo(mean(spares), 9);
      expect(row.spare.high - row.spare.mean).toBeCloseTo(halfWidth(spares), 6);
    });
  });

  it("years until it is too small: while the busiest day of the busiest month fits", () => {
    each((at) => {
      const { row, trial } = dossier.kinds[at]!;
      const fits = (year: number) => (weekOf(year, 11) / 5) * 1.1 <= trial.capacityHeads.mean;
      const years = [1, 2, 3, 4, 5, 6].findIndex((year) => !fits(year));
      expect(row.yearsUntilTooSmall).toBe(years === -1 ? null : years);
    });
  });

  /** Cash of a year and the flows, with factors on volume, price, animals, pay, energy and what is bought. */
  function flowsOf(at: number, f: Record<string, number>): { flows: number[]; costPerKg: number } {
    const { kind, trial, staffing, ramp, built, row, money } = dossier.kinds[at]!;
    const of = (key: string) => mean(values(at, key));
    const heads = kind.design.rate.headsPerDay;
    const electricity = built.connections.parts.find(({ service }) => service === "electricity")!.rows;
    const power = (what: string) => electricity.find((each) => each.what === what)!.value;
    const services = (power("a day") + power("fuel for hot water")) * 0.25 + row.cubicMetres * 5;
    const pay = (of("cost.regularPay") + of("cost.overtimePay")) * (staffing.employed / staffing.atPosts);
    const training = (400 / ((heads / staffing.atPosts) * staffing.posts.length)) * pay;
    const { machines, building } = money!.capital;
    const most = (trial.capacityHeads.mean * 5) / 1.1;
    const years = [1, 2, 3, 4, 5, 6].map((year) => {
      const weeks = SEASON.map((_, month) => weekOf(year, month) * f.volume!);
      const asked = mean(weeks);
      const short = year > 1 ? 0 : ramp.reduce((sum, { share }) => sum + Math.max(0, asked - most * share), 0);
      const sold = mean(weeks.map((week) => Math.min(week, most))) * WEEKS - short;
      const shops = SHOPS * 1.06 ** (year - 1);
      const price = (7 * shops + 7.5 * KITCHENS) / (shops + KITCHENS);
      const kilograms = sold * LIVE * YIELD * LOST;
      const cost = {
        pay: pay * DAYS * f.pay!,
        energy: (sold * services * f.energy!) / heads,
        packing: (sold * of("plantCost.packaging")) / heads,
        rest: 60_000 + 0.03 * (machines + building) * f.capital!,
      };
      const made = cost.pay + cost.energy + cost.packing + cost.rest;
      const revenue = kilograms * price * f.price! + (sold * of("revenue.skins")) / heads;
      return { cash: revenue - made - (sold * of("cost.animals") * f.animals!) / heads, made, kilograms };
    });
    const bought = machines + building + 50_000;
    const flows = [-bought * f.capital! - training * f.pay!, ...years.map(({ cash }) => cash)];
    flows[4] = flows[4]! - machines * f.capital!;
    flows[6] = flows[6]! + (machines * 0.5 + building * (1 - 6 / 20)) * f.capital!;
    const yearly = (life: number) => 0.05 / (1 - 1.05 ** -life);
    const capital =
      (machines * yearly(4) + building * yearly(20) + 50_000 * yearly(6)) * f.capital! + training * yearly(6) * f.pay!;
    return { flows, costPerKg: (years[1]!.made + capital) / years[1]!.kilograms };
  }

  const worth = (flows: readonly number[]) => flows.reduce((sum, flow, year) => sum + flow / 1.05 ** year, 0);
  const WRITTEN = { volume: 1, price: 1, animals: 1, pay: 1, energy: 1, capital: 1 };
  const RANGES = { volume: 0.15, price: 0.08, animals: 0.08, pay: 0.05, energy: 0.3, capital: 0.2 };

  it("cost of a kilogram and net present value, as written", () => {
    each((at) => {
      const { flows, costPerKg } = flowsOf(at, WRITTEN);
      const { row, money } = dossier.kinds[at]!;
      expect(row.costPerKg!.mean / costPerKg).toBeCloseTo(1, 9);
      for (const [year, flow] of money!.flows!.entries()) expect(flow / flows[year]!).toBeCloseTo(1, 9);
      expect(row.value!.mean / worth(flows)).toBeCloseTo(1, 9);
    });
  });

  it("their ranges, losses and the probability of being best: the imagined worlds drawn again", () => {
    const normal = (world: number, owner: string) => {
      const u = uniformStream("1", world, owner, "range").next();
      // Inverse by bisection of the normal distribution, through the error function's series.
      let [low, high] = [-9, 9];
      while (high - low > 1e-12) {
        const middle = (low + high) / 2;
        if (below(middle) < u) low = middle;
        else high = middle;
      }
      return (low + high) / 2;
    };
    const few = 60;
    const factor = (range: number, z: number) => (1 + range) ** (z / 1.959963984540054);
    const drawn = Array.from({ length: few }, (_, world) => {
      const all = Object.fromEntries(
        Object.entries(RANGES).map(([key, range]) => [key, factor(range, normal(world, key))]),
      );
      const common = normal(world, "capital");
      return [0, 1].map((at) => {
        const capital = factor(0.2, (common + normal(world, `capital ${at}`)) / Math.SQRT2);
        return worth(flowsOf(at, { ...all, capital }).flows);
      });
    });
    const wins = drawn.filter(([a, b]) => b! > a!).length / few;
    // 60 of the 1,000 worlds: the share differs by more than 0.2 with probability 0.002 at most.
    expect(Math.abs(wins - dossier.kinds[1]!.row.best!)).toBeLessThan(0.2);
    expect(dossier.kinds[0]!.row.best! + dossier.kinds[1]!.row.best!).toBeCloseTo(1, 12);
    each((at) => {
      const { low, high } = dossier.kinds[at]!.row.value!;
      const inside = drawn.filter((world) => world[at]! >= low && world[at]! <= high).length / few;
      // Nineteen of twenty lie inside; fewer than 52 of 60 do with probability 0.002.
      expect(inside).toBeGreaterThanOrEqual(52 / 60);
      const losses = drawn.filter((world) => world[at]! < 0).length / few;
      expect(Math.abs(losses - dossier.kinds[at]!.row.loss!)).toBeLessThan(0.2);
    });
  });
});

function below(z: number): number {
  let [sum, term] = [z, z];
  for (let k = 1; k < 300; k++) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return z < -8 ? 0 : z > 8 ? 1 : 0.5 + (sum * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}

describe("the documents", () => {
  it("of the owner say the verdict and the reason of the choice, what it costs, and the cautions", () => {
    const [owner] = dossierDocuments(dossier);
    const { verdict, words } = ownerLines(dossier);
    const chosen = dossier.kinds[dossier.choice.row!]!.row;
    expect(verdict).toContain(chosen.name);
    const plain = (text: string) => text.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
    expect(plain(owner!.html)).toContain(plain(verdict));
    expect(words[0]).toMatch(/worth most over the years looked at/);
    expect(owner!.html).toMatch(/Animal welfare and people&#39;s safety come before throughput/);
    expect(owner!.html).toMatch(/schematic to talk about, not to build from/);
  });

  it("for builder, bank, veterinarian, trainer and of the sources each have cautions and their own tables", () => {
    const documents = new Map(dossierDocuments(dossier).map(({ name, html }) => [name, html]));
    const has = (name: string, words: RegExp) => expect(documents.get(name)).toMatch(words);
    for (const html of documents.values()) expect(html).toMatch(/Verify against the real line before relying on it/);
    has("annex-builder", /Equipment[\s\S]*Electricity[\s\S]*By-products[\s\S]*Walks of the crews/);
    has(
      "annex-bank",
      /Money by year[\s\S]*What is bought[\s\S]*Full cost of year 2[\s\S]*Break-even, standstill, loan/,
    );
    has("annex-veterinarian", /stun to stick[\s\S]*Article 14/);
    has("annex-trainer", /People by post[\s\S]*The first weeks[\s\S]*Spare|What to measure in the first month/i);
    for (const { what } of dossier.figures.slice(0, 20)) has("annex-sources", new RegExp(what.replace(/[()]/g, ".")));
  });

  it("have all their tables in the workbook, numbers as numbers", () => {
    const tables = dossierTables(dossier);
    const owner = tables[0]!;
    const column = owner.columns.findIndex(({ name }) => name === "Net present value");
    expect(owner.rows.map((row) => row[column])).toEqual(dossier.kinds.map(({ row }) => row.value!.mean));
    expect(new Set(tables.map(({ name }) => name)).size).toBe(tables.length);
    for (const { columns, rows } of tables) for (const row of rows) expect(row).toHaveLength(columns.length);
  });

  it("have a drawing at true scale: ten millimetres of paper to a metre", () => {
    const { svg, widthMillimetres } = dossierDrawing(dossier);
    expect(svg).toContain(`width="${widthMillimetres}mm"`);
    expect(widthMillimetres).toBeGreaterThan(10 * dossier.kinds[dossier.choice.row!]!.built.layout.building.width);
  });

  it("speak of plans that are sound, the one with people who still learn as well", () => {
    for (const kind of kinds) expect(readPlan(kind.design.plan, NO_FILES).faults).toEqual([]);
    const { kind, ramp } = dossier.kinds[dossier.choice.row!]!;
    const { plan, faults } = readPlan(firstWeeksPlan(kind, ramp), NO_FILES);
    expect(faults).toEqual([]);
    expect(plan!.week!.days).toHaveLength(Math.min(56, ramp.length * 5));
  });
});

describe("advice follows the figures", () => {
  const changed = (change: Partial<Dossier["kinds"][number]["row"]>): Dossier => {
    const at = dossier.choice.row!;
    return {
      ...dossier,
      kinds: dossier.kinds.map((told, kind) => (kind === at ? { ...told, row: { ...told.row, ...change } } : told)),
    };
  };
  const verdictOf = (change: Parameters<typeof changed>[0]) => ownerLines(changed(change)).verdict;

  it("to build, hardly, not at these prices, or none", () => {
    const value = { mean: 1e6, low: 5e5, high: 2e6 };
    expect(verdictOf({ value, loss: 0.01 })).toMatch(/^Build: /);
    expect(verdictOf({ value, loss: 0.3 })).toMatch(/^Hardly: .* loses money in 30 %/);
    expect(verdictOf({ value: { ...value, mean: -2e6 }, loss: 0.9 })).toMatch(
      /^Do not build at these prices: .* 2\.0 million EUR/,
    );
    const none = {
      ...changed({ obstacles: ["floor: 900 m2 needed, the site has 500"] }),
      choice: { ...dossier.choice, row: null },
    };
    expect(ownerLines(none).verdict).toMatch(/^Build none/);
    expect(ownerLines(none).words[0]).toMatch(/floor: 900 m2 needed/);
  });

  it("to ask for the prices that are missing", () => {
    const { words, next } = ownerLines(changed({ capital: null, open: ["capital.floor"] }));
    expect(words.join(" ")).toMatch(/What it costs to buy is open: 1 price is missing \(capital\.floor\)/);
    expect(next[0]).toMatch(/capital\.floor/);
  });

  it("to put a broken time limit right before anything is built", () => {
    const limits = [{ name: "stun to stick", outside: 0.02, source: "" }];
    const at = dossier.choice.row!;
    const broken = {
      ...dossier,
      kinds: dossier.kinds.map((told, kind) => (kind === at ? { ...told, trial: { ...told.trial, limits } } : told)),
    };
    const [owner] = dossierDocuments(broken);
    expect(owner!.html.replace(/\u00a0/g, " ")).toMatch(
      /stun to stick: 2(\.0)? %[\s\S]*Do not build before that is put right/,
    );
  });
});
