import { describe, expect, it } from "vitest";
import { AS_WRITTEN, type Business } from "../../../../sim/questions/dossier/money.ts";
import { swings, WORLDS, worldFactors } from "../../../../sim/questions/dossier/worlds.ts";

const RANGES = { volume: 0.15, price: 0.1, animals: 0.1, pay: 0.05, energy: 0.3, capital: 0.2 };

describe("imagined worlds", () => {
  const drawn = Array.from({ length: WORLDS }, (_, world) => worldFactors(RANGES, "seed", world, 2));
  const within = (values: readonly number[], range: number) =>
    values.filter((value) => value > 1 / (1 + range) && value < 1 + range).length / values.length;

  it("keep each figure within its range in nineteen of twenty", () => {
    // Of 1,000 worlds at 0.95 the share lies within 0.929 and 0.971 but for a probability of 0.002 each.
    for (const key of ["volume", "price", "pay", "energy", "capital"] as const)
      for (const kind of [0, 1]) {
        const share = within(
          drawn.map((world) => world[kind]![key]),
          RANGES[key],
        );
        expect(share).toBeGreaterThan(0.929);
        expect(share).toBeLessThan(0.971);
      }
  });

  it("are the same for every kind but for what is bought, of which half the doubt is common", () => {
    expect(drawn.every(([a, b]) => a!.price === b!.price && a!.volume === b!.volume)).toBe(true);
    const logs = drawn.map((world) => world.map(({ capital }) => Math.log(capital)));
    const sum = (of: (pair: number[]) => number) => logs.reduce((total, pair) => total + of(pair), 0);
    const correlation = sum(([a, b]) => a! * b!) / Math.sqrt(sum(([a]) => a! ** 2) * sum(([, b]) => b! ** 2));
    // 0.5, with a standard error of 0.024: outside these bounds with probability 0.0001.
    expect(correlation).toBeGreaterThan(0.4);
    expect(correlation).toBeLessThan(0.6);
  });

  it("hang on seed and number alone", () => {
    expect(worldFactors(RANGES, "seed", 7, 2)).toEqual(drawn[7]);
    expect(worldFactors(RANGES, "seed", 7, 3).slice(0, 2)).toEqual(drawn[7]);
    expect(worldFactors(RANGES, "other", 7, 2)).not.toEqual(drawn[7]);
  });

  it("do not move what has no range", () => {
    const none = { volume: 0, price: 0, animals: 0, pay: 0, energy: 0, capital: 0 };
    expect(worldFactors(none, "seed", 3, 1)).toEqual([AS_WRITTEN]);
  });
});

describe("swings", () => {
  it("try each figure at both ends alone, and put the widest first", () => {
    const business = { capital: {} } as unknown as Business;
    const found = swings(business, RANGES, ({ price, pay, capital }) => 100 * price - 50 * pay - 10 * capital);
    expect(found.slice(0, 3).map(({ key }) => key)).toEqual(["price", "pay", "capital"]);
    expect(found[0]!.range).toBe(0.1);
    expect(found[0]!.atLow).toBeCloseTo(100 / 1.1 - 60, 9);
    expect(found[0]!.atHigh).toBeCloseTo(110 - 60, 9);
    expect(found.at(-1)).toMatchObject({ atLow: 40, atHigh: 40 });
  });
});
