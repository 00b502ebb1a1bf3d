import { describe, expect, it } from "vitest";
import {
  daysPerWorld,
  furtherWorlds,
  halfWidthOfWorlds,
  studentQuantile,
} from "../../../../sim/maths/statistics/index.ts";

const worlds = (count: number, days: number) => new Array<number>(count).fill(days);

describe("daysPerWorld", () => {
  it.each([
    // The root of 0.3 x 40 / 3 is 2; of 1 x 0.36 / 0.3625 it is 0.9965.
    [{ between: 3, within: 40 }, 0.3, 2],
    [{ between: 0.3625, within: 0.36 }, 1, 1],
    [{ between: 1, within: 900 }, 1, 30],
    [{ between: 1, within: 1e6 }, 1, 50],
    [{ between: 0, within: 4 }, 1, 50],
    [{ between: 4, within: 0 }, 1, 1],
  ])("of %o with a world that costs %d days are %d (Cochran 1977, section 10.6)", (variance, cost, days) => {
    expect(daysPerWorld(variance, cost, 50)).toBe(days);
  });

  it("is the cheapest of all whole numbers for the same precision", () => {
    for (const [between, within, cost] of [
      [2, 9, 0.5],
      [1, 7, 3],
      [0.1, 20, 0.2],
      [5, 3, 10],
    ] as const) {
      const price = (days: number) => (cost + days) * (between + within / days);
      const chosen = price(daysPerWorld({ between, within }, cost, 50));
      for (let days = 1; days <= 50; days++) expect(chosen).toBeLessThanOrEqual(price(days) + 1e-12);
    }
  });
});

describe("halfWidthOfWorlds", () => {
  it("is that by the mean square between worlds where all have as many days (check values 1.3: 1.8374949)", () => {
    // Data A: 5 worlds of 4 days, between 2.135, within 0.22.
    expect(halfWidthOfWorlds(worlds(5, 4), { between: 2.135, within: 0.22 }, 0.95)).toBeCloseTo(1.8374949, 6);
  });

  it("counts worlds with more days for more, and luck by all days", () => {
    const found = halfWidthOfWorlds([4, 4, 2], { between: 3, within: 5 }, 0.9);
    expect(found).toBeCloseTo(studentQuantile(0.95, 2) * Math.sqrt((3 * 36) / 100 + 5 / 10), 12);
  });
});

describe("furtherWorlds", () => {
  const variance = { between: 4, within: 8 };
  it("is the fewest that do, none where it is enough, null where the most would not do", () => {
    const asked = { wanted: 0.5, confidence: 0.95, most: 1000 };
    const more = furtherWorlds(worlds(10, 4), 2, variance, asked)!;
    const width = (count: number) => halfWidthOfWorlds([...worlds(10, 4), ...worlds(count, 2)], variance, 0.95);
    expect(width(more)).toBeLessThanOrEqual(0.5);
    expect(width(more - 1)).toBeGreaterThan(0.5);
    expect(furtherWorlds(worlds(10, 4), 2, variance, { ...asked, wanted: 10 })).toBe(0);
    expect(furtherWorlds(worlds(10, 4), 2, variance, { ...asked, most: 20 })).toBeNull();
  });
});
