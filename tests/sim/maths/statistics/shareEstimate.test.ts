import { describe, expect, it } from "vitest";
import { jStat } from "../../../../sim/maths/numeric/index.ts";
import { type UniformStream, uniformStream } from "../../../../sim/maths/random/index.ts";
import { estimate, estimateWithin, exactShareInterval, shareEstimate } from "../../../../sim/maths/statistics/index.ts";

describe("shareEstimate", () => {
  it("is Student's interval of the logit, turned back (worked with SciPy)", () => {
    // t(0.975, 3) = 3.182446305; mean 0.1, standard error 0.0408248290.
    const found = shareEstimate([0, 0.1, 0.1, 0.2], 0.95)!;
    expect(found.mean).toBeCloseTo(0.1, 12);
    expect(found.low).toBeCloseTo(0.025560567, 8);
    expect(found.high).toBeCloseTo(0.320029199, 8);
    expect(found.halfWidth).toBeCloseTo((found.high! - found.low!) / 2, 12);
  });

  it("has the exact bound of Clopper and Pearson (1934) where no day shows any, or all show all", () => {
    const none = shareEstimate(new Array(40).fill(0), 0.95)!;
    expect(none).toMatchObject({ mean: 0, low: 0 });
    // 1 - 0.025^(1/40)
    expect(none.high).toBeCloseTo(0.0880973, 6);
    expect(none.high).toBe(exactShareInterval(0, 40, 0.95)!.high);
    expect(shareEstimate(new Array(40).fill(1), 0.95)).toMatchObject({ mean: 1, high: 1 });
    expect(shareEstimate(new Array(40).fill(1), 0.95)!.low).toBeCloseTo(1 - none.high!, 12);
  });

  it("has no width where all days are alike at another share, and no interval for one day", () => {
    expect(shareEstimate([0.25, 0.25], 0.95)).toMatchObject({ low: 0.25, high: 0.25 });
    expect(shareEstimate([0.25, null], 0.95)).toMatchObject({ n: 1, low: null, high: null });
    expect(shareEstimate([null], 0.95)).toBeNull();
  });

  it("refuses what is no share", () => {
    expect(() => shareEstimate([0.5, 1.2], 0.95)).toThrow(/from 0 to 1/);
  });

  it("stays within 0 to 1 and about the mean, whatever the days (1,000 random studies, seed 61)", () => {
    const uniforms = uniformStream("61", 0, "test", "shares");
    for (let study = 0; study < 1000; study++) {
      const power = 1 + Math.floor(uniforms.next() * 30);
      const values = Array.from({ length: 2 + Math.floor(uniforms.next() * 20) }, () => uniforms.next() ** power);
      const { mean, low, high } = shareEstimate(values, 0.95)!;
      expect(low).toBeGreaterThanOrEqual(0);
      expect(low).toBeLessThanOrEqual(mean);
      expect(high).toBeGreaterThanOrEqual(mean);
      expect(high).toBeLessThanOrEqual(1);
    }
  });
});

/** A day's share of heads outside a limit: 70 to 130 heads, each outside with the day's own probability. */
function dayOf(probability: number, uniforms: UniformStream): number {
  const heads = 70 + Math.floor(uniforms.next() * 61);
  let outside = 0;
  if (probability > 0) for (let head = 0; head < heads; head++) if (uniforms.next() < probability) outside += 1;
  return outside / heads;
}

/** Days that differ a little: the probability is beta distributed with this mean and intraclass correlation. */
const steady = (mean: number, within: number) => (uniforms: UniformStream) => {
  const sum = (1 - within) / within;
  return jStat.beta.inv(uniforms.next() || 0.5, mean * sum, (1 - mean) * sum);
};

/** Most days show none; on a share of them something goes wrong, for 0 to 20 % of the heads. */
const troubled = (share: number) => (uniforms: UniformStream) => (uniforms.next() < share ? 0.2 * uniforms.next() : 0);

/** Studies of 1,000 whose interval holds the true share: this room's, and Student's t. */
function covered(days: number, truth: number, rate: (uniforms: UniformStream) => number, seed: string) {
  const counts = { shares: 0, student: 0, unseen: 0, unseenMissed: 0 };
  for (let study = 0; study < 1000; study++) {
    const uniforms = uniformStream(seed, study, "test", "cover");
    const values = Array.from({ length: days }, () => dayOf(rate(uniforms), uniforms));
    const holds = ({ low, high }: { low: number | null; high: number | null }) => low! <= truth && truth <= high!;
    const found = shareEstimate(values, 0.95)!;
    if (holds(found)) counts.shares += 1;
    if (holds(estimate(values, 0.95)!)) counts.student += 1;
    if (found.max > 0) continue;
    counts.unseen += 1;
    if (!holds(found)) counts.unseenMissed += 1;
  }
  return counts;
}

/** A 95 % interval covers 926 to 971 times in 1,000 with probability 0.999 (binomial). */
const [LEAST, MOST] = [926, 971];

describe("coverage of the true share, 1,000 studies each, error probability 0.001", () => {
  it.each([
    ["half of the heads, days alike", 10, 0.5, steady(0.5, 0.02), "71"],
    ["10 %, days uneven", 20, 0.1, steady(0.1, 0.05), "72"],
    ["2 %, days a little uneven", 40, 0.02, steady(0.02, 0.02), "73"],
    ["trouble on one day in two", 20, 0.05, troubled(0.5), "74"],
    ["trouble on one day in five", 40, 0.02, troubled(0.2), "75"],
  ] as const)("is as stated for %s", (_, days, truth, rate, seed) => {
    const { shares } = covered(days, truth, rate, seed);
    expect(shares).toBeGreaterThanOrEqual(LEAST);
    expect(shares).toBeLessThanOrEqual(MOST);
  });

  it("is nearer to what is stated than Student's t for trouble on one day in twenty", () => {
    const { shares, student } = covered(40, 0.005, troubled(0.05), "76");
    expect(student).toBeLessThan(LEAST);
    expect(shares).toBeGreaterThanOrEqual(LEAST);
  });

  it("holds wherever nothing was seen: trouble on one day in fifty, where Student's t says 0 for sure", () => {
    const { shares, unseen, unseenMissed } = covered(40, 0.002, troubled(0.02), "77");
    expect(unseen).toBeGreaterThan(300);
    expect(unseenMissed).toBe(0);
    expect(shares).toBeGreaterThanOrEqual(LEAST);
  });

  it("falls short for very uneven rare shares, which the README says", () => {
    const { shares, student } = covered(40, 0.005, steady(0.005, 0.05), "78");
    expect(shares).toBeGreaterThan(student);
    expect(shares).toBeGreaterThanOrEqual(850);
  });

  it("is not reached by Student's t, so the test can fail", () => {
    expect(covered(20, 0.02, troubled(0.2), "79").student).toBeLessThan(LEAST);
  });
});

describe("estimateWithin", () => {
  it("cuts the interval of times and amounts off at 0, and leaves what may be negative", () => {
    const plain = estimate([0, 0, 3], 0.95)!;
    expect(plain.low).toBeLessThan(0);
    expect(estimateWithin("any", [0, 0, 3], 0.95)).toEqual(plain);
    expect(estimateWithin("amount", [0, 0, 3], 0.95)).toEqual({ ...plain, low: 0, halfWidth: plain.high! / 2 });
    expect(estimateWithin("amount", [null], 0.95)).toBeNull();
  });

  it("takes what goes beyond 1 for a ratio, cut off at 0 alone", () => {
    expect(estimateWithin("share", [0.9, 1.3], 0.95)).toMatchObject({ mean: 1.1, low: 0 });
    expect(estimateWithin("share", [0.9, 1.3], 0.95)!.high).toBeGreaterThan(1);
  });
});
