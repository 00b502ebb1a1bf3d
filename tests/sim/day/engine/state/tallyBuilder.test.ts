import { describe, expect, it } from "vitest";
import { TallyBuilder } from "../../../../../sim/day/engine/state/tallyBuilder.ts";
import { Sampler, uniformStream } from "../../../../../sim/maths/random/index.ts";
import { relativeError } from "../../../../support/relativeError.ts";

function sample(count: number): number[] {
  const sampler = new Sampler({ family: "lognormal", mean: 40, cv: 1.2 }, uniformStream("tally", 0, "a", "b"));
  return Array.from({ length: count }, () => sampler.draw());
}

describe("TallyBuilder", () => {
  it("keeps count, mean, sd and extremes exactly", () => {
    const builder = new TallyBuilder();
    for (const value of [2, 4, 4, 4, 5, 5, 7, 9]) builder.add(value);
    const tally = builder.tally();
    expect([tally.count, tally.mean, tally.min, tally.max]).toEqual([8, 5, 2, 9]);
    expect(relativeError(tally.sd, Math.sqrt(32 / 7))).toBeLessThan(1e-14);
  });

  it("gives quantiles within 0.8 % of the sorted sample's", () => {
    const values = sample(20_000);
    const builder = new TallyBuilder();
    for (const value of values) builder.add(value);
    const sorted = [...values].sort((a, b) => a - b);
    const { quantiles } = builder.tally();
    for (const [name, share] of [
      ["p05", 0.05],
      ["p50", 0.5],
      ["p95", 0.95],
      ["p99", 0.99],
    ] as const) {
      expect(relativeError(quantiles[name], sorted[Math.floor(share * sorted.length)]!), name).toBeLessThan(0.008);
    }
  });

  it("has bins that hold every value once, narrow and in order", () => {
    const builder = new TallyBuilder();
    const values = [0, ...sample(500), 3e9];
    for (const value of values) builder.add(value);
    const { bins, count } = builder.tally();
    expect(bins.reduce((sum, bin) => sum + bin.count, 0)).toBe(count);
    bins.slice(1).forEach((bin, index) => {
      expect(bin.from).toBeGreaterThanOrEqual(bins[index]!.to);
      expect(bin.to / bin.from).toBeLessThan(1.01);
    });
  });

  it("says by its count that it is empty, and is empty again after a reset", () => {
    const builder = new TallyBuilder();
    builder.add(3);
    builder.reset();
    expect(builder.tally()).toMatchObject({ count: 0, mean: 0, sd: 0, min: 0, max: 0, bins: [] });
  });

  it("puts every quantile of equal values on that value", () => {
    const builder = new TallyBuilder();
    for (let round = 0; round < 10; round++) builder.add(7.3);
    expect(new Set(Object.values(builder.tally().quantiles))).toEqual(new Set([7.3]));
  });
});
