import { uniformStream } from "../../maths/random/index.ts";
import { normalQuantile, quantile } from "../../maths/statistics/index.ts";
import type { Ranged } from "../options/index.ts";
import type { Demand } from "../size/index.ts";
import { AS_WRITTEN, type Business, type Factors, fullCost, netPresentValue } from "./money.ts";

/** Worlds that are drawn: the standard error of a probability is 1.6 % at most. */
export const WORLDS = 1000;

const NINETEEN_OF_TWENTY = 0.975;
const WITHIN = normalQuantile(NINETEEN_OF_TWENTY);

/** A factor's logarithm is normal, and in nineteen of twenty worlds it lies within 1 / (1 + range) and 1 + range. */
function factorOf(range: number, normal: number): number {
  return Math.exp((Math.log1p(range) * normal) / WITHIN);
}

/** Half of the doubt in what is bought concerns all kinds of plant alike, the other half each by itself. */
const SHARED = Math.SQRT1_2;

/** The factors of each kind in one world: the same for all, but for what is bought. A world's draws hang on seed and number alone. */
export function worldFactors(ranges: Demand["ranges"], seed: string, world: number, kinds: number): Factors[] {
  const normal = (owner: string): number => normalQuantile(uniformStream(seed, world, owner, "range").next());
  const of = (key: keyof Factors): number => factorOf(ranges[key], normal(key));
  const common = {
    volume: of("volume"),
    price: of("price"),
    animals: of("animals"),
    pay: of("pay"),
    energy: of("energy"),
  };
  const all = normal("capital");
  return Array.from({ length: kinds }, (_, kind) => ({
    ...common,
    capital: factorOf(ranges.capital, SHARED * (all + normal(`capital ${kind}`))),
  }));
}

/** What the worlds say of one kind. */
export interface WorldOutcome {
  costPerKg: Ranged;
  /** Null where a price is missing. */
  value: Ranged | null;
  /** Share of worlds in which no other kind is worth more; null likewise. */
  best: number | null;
  /** Share of worlds in which it is worth less than nothing; null likewise. */
  loss: number | null;
}

/**
 * Cost per kilogram and net present value of each kind over the worlds: as written, with the range of nineteen worlds of twenty. The value
 * of every kind counts for "best" that `mayWin` allows.
 */
export function overWorlds(
  businesses: readonly Business[],
  {
    ranges,
    seed,
    year,
    valued,
    mayWin,
  }: { ranges: Demand["ranges"]; seed: string; year: number; valued: boolean; mayWin: readonly boolean[] },
): WorldOutcome[] {
  const costs = businesses.map(() => new Array<number>(WORLDS));
  const values = businesses.map(() => new Array<number>(WORLDS));
  const wins = businesses.map(() => 0);
  for (let world = 0; world < WORLDS; world++) {
    const factors = worldFactors(ranges, seed, world, businesses.length);
    let winner = -1;
    for (const [kind, business] of businesses.entries()) {
      costs[kind]![world] = fullCost(business, year, factors[kind]!).perKg;
      if (!valued) continue;
      values[kind]![world] = netPresentValue(business, factors[kind]!);
      if (mayWin[kind]! && (winner === -1 || values[kind]![world]! > values[winner]![world]!)) winner = kind;
    }
    if (winner !== -1) wins[winner] = wins[winner]! + 1;
  }
  return businesses.map((business, kind) => ({
    costPerKg: ranged(fullCost(business, year).perKg, costs[kind]!),
    value: valued ? ranged(netPresentValue(business), values[kind]!) : null,
    best: valued ? wins[kind]! / WORLDS : null,
    loss: valued ? values[kind]!.filter((value) => value < 0).length / WORLDS : null,
  }));
}

function ranged(mean: number, list: readonly number[]): Ranged {
  const sorted = list.toSorted((a, b) => a - b);
  return { mean, low: quantile(sorted, 1 - NINETEEN_OF_TWENTY)!, high: quantile(sorted, NINETEEN_OF_TWENTY)! };
}

/** One figure of the business at either end of its range, the others as written. */
export interface Swing {
  key: keyof Factors;
  range: number;
  /** Value with the figure at its low end, and at its high end. */
  atLow: number;
  atHigh: number;
}

/** What each figure alone does to the value, the widest first. */
export function swings(business: Business, ranges: Demand["ranges"], worthOf: (factors: Factors) => number): Swing[] {
  const keys = Object.keys(AS_WRITTEN) as (keyof Factors)[];
  const all = keys.map((key): Swing => {
    const range = ranges[key];
    const at = (factor: number) => worthOf({ ...AS_WRITTEN, [key]: factor });
    return { key, range, atLow: at(1 / (1 + range)), atHigh: at(1 + range) };
  });
  return all
    .filter(({ key }) => key !== "capital" || business.capital !== null)
    .toSorted((a, b) => Math.abs(b.atHigh - b.atLow) - Math.abs(a.atHigh - a.atLow));
}
