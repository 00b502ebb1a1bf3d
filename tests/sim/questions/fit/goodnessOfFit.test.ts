import { describe, expect, it } from "vitest";
import { uniformStream, type Varying } from "../../../../sim/maths/random/index.ts";
import { FAMILIES } from "../../../../sim/questions/fit/families/index.ts";
import { lawOf } from "../../../../sim/questions/fit/families/lawOf.ts";
import type { Fitted } from "../../../../sim/questions/fit/family.ts";
import { goodnessOfFit } from "../../../../sim/questions/fit/goodnessOfFit.ts";
import { resampler } from "../../../../sim/questions/fit/resample.ts";
import { sampleOf } from "../../../../sim/questions/fit/sample.ts";
import { simulatedSamples } from "../../../../sim/questions/fit/sampleSize.ts";
import { TailCount } from "../../../../sim/questions/fit/tailCount.ts";
import { CYCLES, drawnTimes, UPTIMES } from "../../../support/timeStudies.ts";

const family = (name: string) => FAMILIES.find((each) => each.name === name)!;
const options = { seed: "1", samples: 99, resolution: 0 };

interface Trial {
  count: number;
  level: number;
  /** Times are noted in whole seconds. */
  whole?: boolean;
  resolution?: number;
}

function rejections(name: string, law: Varying, { count, level, whole = false, resolution = 0 }: Trial): number {
  let rejected = 0;
  for (let replication = 0; replication < count; replication++) {
    const drawn = drawnTimes(law, 40, "goodness", replication);
    const sample = sampleOf(whole ? drawn.map(Math.round) : drawn);
    const fitted = family(name).fit(sample) as Fitted;
    const test = goodnessOfFit(family(name), fitted, sample, { ...options, seed: String(replication), resolution })!;
    if (test.andersonDarling.p <= level) rejected++;
  }
  return rejected;
}

describe("goodnessOfFit", () => {
  /** 200 samples at level 0.1: 20 expected, 7 to 36 with probability 0.9994 (binomial). */
  it.each<[string, Varying]>([
    ["lognormal", { family: "lognormal", mean: 16.8, cv: 0.28 }],
    ["weibull", { family: "weibull", mean: 16.8, cv: 0.6 }],
    ["exponential", { family: "exponential", mean: 16 }],
  ])("rejects a true %s law as often as its level says", (name, law) => {
    const rejected = rejections(name, law, { count: 200, level: 0.1 });
    expect(rejected).toBeGreaterThanOrEqual(7);
    expect(rejected).toBeLessThanOrEqual(36);
  });

  it("rejects it no more often when times are coarsely noted, as those are that it draws", () => {
    const law: Varying = { family: "lognormal", mean: 4.6, cv: 0.15 };
    const trial: Trial = { count: 100, level: 0.1, whole: true };
    // 10 expected at most; 22 or more with probability 0.0003.
    expect(rejections("lognormal", law, { ...trial, resolution: 1 })).toBeLessThan(22);
    // Without its knowledge of the stopwatch it would nearly always.
    expect(rejections("lognormal", law, { ...trial, resolution: 0 })).toBeGreaterThan(90);
  });

  it("rejects a wrong law in most samples", () => {
    const skewed: Varying = { family: "lognormal", mean: 10, cv: 0.8 };
    expect(rejections("normal", skewed, { count: 30, level: 0.05 })).toBeGreaterThan(25);
    expect(rejections("exponential", { family: "lognormal", mean: 10, cv: 0.3 }, { count: 30, level: 0.05 })).toBe(30);
  });

  it("is a pure function of sample, family and seed", () => {
    const sample = sampleOf(CYCLES);
    const fitted = family("gamma").fit(sample) as Fitted;
    const once = goodnessOfFit(family("gamma"), fitted, sample, options);
    expect(goodnessOfFit(family("gamma"), fitted, sample, options)).toEqual(once);
    expect(goodnessOfFit(family("gamma"), fitted, sample, { ...options, seed: "2" })).not.toEqual(once);
  });

  it("takes open times", () => {
    const sample = sampleOf(UPTIMES.ended, UPTIMES.open);
    const test = goodnessOfFit(family("weibull"), family("weibull").fit(sample) as Fitted, sample, options)!;
    expect(test.andersonDarling.p).toBeGreaterThan(0.1);
  });

  it("gives no answer where simulated samples cannot be fitted", () => {
    const never = { ...family("gamma"), fit: () => "no" };
    const sample = sampleOf(CYCLES);
    expect(goodnessOfFit(never, family("gamma").fit(sample) as Fitted, sample, options)).toBeNull();
  });
});

describe("TailCount", () => {
  it("counts the value itself in, and stops at fifty beyond", () => {
    const none = new TailCount(5);
    for (let i = 0; i < 99; i++) none.add(1);
    expect(none.p).toBe(0.01);
    const many = new TailCount(5);
    for (let i = 0; i < 400; i++) many.add(i % 2 === 0 ? 5 : 1);
    expect([many.settled, many.p]).toEqual([true, 50 / 99]);
  });
});

describe("simulatedSamples", () => {
  it("are fewer for large samples, and 99 at least where so many are wanted", () => {
    expect([20, 1000, 2000, 10_000].map((n) => simulatedSamples(499, n))).toEqual([499, 499, 249, 99]);
    expect(simulatedSamples(50, 10_000)).toBe(50);
  });
});

describe("resampler", () => {
  const uniforms = () => uniformStream("resample", 0, "a", "b");

  it("draws as many times, noted to the same step, never 0", () => {
    const law = lawOf("exponential", { mean: 1 });
    const { ended, open } = resampler(sampleOf(Array.from({ length: 500 }, (_, i) => i + 1)), 0.5).draw(
      law,
      uniforms(),
    );
    expect([ended.length, open.length]).toEqual([500, 0]);
    expect([...ended].every((time) => time > 0 && Number.isInteger(time / 0.5))).toBe(true);
  });

  it("leaves times open as long ones were in the sample", () => {
    const sample = sampleOf(UPTIMES.ended, UPTIMES.open);
    const drawn = resampler(sample, 0).draw(lawOf("exponential", { mean: 2000 }), uniforms());
    expect(drawn.ended.length + drawn.open.length).toBe(12);
    expect(new Set(drawn.open)).toEqual(new Set([600]));
    expect(drawn.ended.every((time) => time <= 600)).toBe(true);
  });
});
