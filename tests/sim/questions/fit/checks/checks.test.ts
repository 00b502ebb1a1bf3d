import { describe, expect, it } from "vitest";
import type { Varying } from "../../../../../sim/maths/random/index.ts";
import {
  censoredTrend,
  countCheck,
  dependenceCheck,
  driftCheck,
  lag1Correlation,
  logRankScores,
  mannKendall,
  mixtureCheck,
  outlierCheck,
  outliersOf,
  roundingCheck,
  runsCheck,
  runsTest,
  sizeOfDrift,
  zeroCheck,
} from "../../../../../sim/questions/fit/checks/index.ts";
import { FAMILIES } from "../../../../../sim/questions/fit/families/index.ts";
import type { Fitted } from "../../../../../sim/questions/fit/family.ts";
import { resolutionOf } from "../../../../../sim/questions/fit/fitColumn.ts";
import { fitMixture } from "../../../../../sim/questions/fit/mixture.ts";
import { sampleOf } from "../../../../../sim/questions/fit/sample.ts";
import { cephes } from "../../../../support/cephes.ts";
import { CYCLES, drawnTimes } from "../../../../support/timeStudies.ts";

const steady: Varying = { family: "lognormal", mean: 10, cv: 0.3 };
/** In the order of the file, all ended. */
const ended = (values: readonly number[]) => values.map((value) => ({ value, open: false }));
/** Cut off at `limit`, as by the end of the watching. */
const cutAt = (values: readonly number[], limit: number) =>
  values.map((value) => ({ value: Math.min(value, limit), open: value > limit }));
const withLines = (values: readonly number[]) => values.map((value, i) => ({ value, line: i + 2 }));

describe("counts, zeros and rounding", () => {
  it("tell too few, few and enough", () => {
    expect(countCheck(7)).toMatchObject({ verdict: "strong", words: expect.stringMatching(/too few to fit/) });
    expect(countCheck(29)).toMatchObject({ verdict: "look", words: expect.stringMatching(/take 30 or more/) });
    expect(countCheck(30).verdict).toBe("fine");
  });

  it("tell zeros", () => {
    expect(zeroCheck(0).verdict).toBe("fine");
    expect(zeroCheck(1).words).toMatch(/^1 time of 0 is left out/);
    expect(zeroCheck(3).words).toMatch(/^3 times of 0 are left out/);
  });

  it("tell times that were noted too coarsely for their spread", () => {
    expect(roundingCheck(1, 0.7, "s").verdict).toBe("look");
    expect(roundingCheck(0.1, 0.7, "s").verdict).toBe("fine");
    expect(roundingCheck(0, 0.7, "s").verdict).toBe("fine");
    expect(roundingCheck(1, 0, "s").verdict).toBe("not checked");
  });

  it("find the step of the stopwatch", () => {
    expect(resolutionOf(Float64Array.of(4.2, 5.1, 6.7))).toBeCloseTo(0.1, 12);
    expect(resolutionOf(Float64Array.of(4.5, 6, 7.5))).toBeCloseTo(1.5, 12);
    expect(resolutionOf(Float64Array.of(10, 25, 40))).toBeCloseTo(5, 12);
    expect(resolutionOf(Float64Array.of(Math.PI, Math.E))).toBe(0);
  });
});

describe("outliers", () => {
  it("are told with their lines, long ones and short ones", () => {
    const found = outliersOf(withLines([...CYCLES, 95, 0.4]));
    expect(found).toEqual([
      { value: 95, line: 22 },
      { value: 0.4, line: 23 },
    ]);
    expect(outlierCheck(withLines([...CYCLES, 95]), "s").words).toMatch(/95 s in line 22/);
    expect(outlierCheck(withLines(CYCLES), "s").verdict).toBe("fine");
  });

  it("are not made of the short times of a machine that fails at random", () => {
    const uptimes = drawnTimes({ family: "exponential", mean: 16 }, 2000, "outliers");
    expect(outliersOf(withLines(uptimes))).toEqual([]);
  });

  it("are told in part when there are many, and never when nothing is known of the spread", () => {
    const values = [...drawnTimes(steady, 100, "outliers"), ...new Array<number>(8).fill(900)];
    expect(outlierCheck(withLines(values), "s").words).toMatch(/and 3 more\. They are kept/);
    expect(outliersOf(withLines([5, 5, 5, 5, 90]))).toEqual([]);
  });
});

describe("the order of the file", () => {
  it("Mann and Kendall's S and its variance with ties, worked by hand", () => {
    // Pairs of 1 2 2 3: five up, one tie; variance (4 x 3 x 13 - 2 x 1 x 9) / 18.
    const { s, p } = mannKendall([1, 2, 2, 3]);
    expect(s).toBe(5);
    expect(p).toBeCloseTo(2 * cephes.ndtr(-4 / Math.sqrt(138 / 18)), 12);
    expect(mannKendall([2, 2, 2]).p).toBe(1);
  });

  it("drift is told with its direction and size", () => {
    const tiring = drawnTimes(steady, 60, "drift").map((time, i) => time * (1 + 0.015 * i));
    expect(driftCheck(ended(tiring), "s")).toMatchObject({
      verdict: "strong",
      words: expect.stringMatching(/^Times grew about \d+ % longer from the first to the last.*first half/),
    });
    expect(driftCheck(ended(tiring.toReversed()), "s").words).toMatch(/ % shorter from the first/);
    expect(driftCheck(ended(tiring.slice(0, 9)), "s").verdict).toBe("not checked");
    expect(driftCheck(ended(new Array(20).fill(3)), "s").verdict).toBe("not checked");
  });

  it("its size is the median slope of all pairs, worked by hand", () => {
    // Logarithms 0, 1, 1.5: slopes 1, 0.75, 0.5, of which the median is 0.75; two steps from first to last.
    const [first, second, third] = [0, 1, 1.5].map(Math.exp);
    expect(sizeOfDrift([first!, second!, third!]).times).toBeCloseTo(Math.exp(1.5), 12);
    const grown = Array.from({ length: 2500 }, (_, i) => 5 * 1.2 ** (i / 2499));
    expect(sizeOfDrift(grown).times).toBeCloseTo(1.2, 3);
  });

  it("a drift of a fifth whose p is 0.02 is worth a look, and told with its size", () => {
    const study = (replication: number) =>
      drawnTimes(steady, 60, "a fifth", replication).map((time, i) => time * (1 + (0.2 * i) / 59));
    const check = Array.from({ length: 40 }, (_, replication) => driftCheck(ended(study(replication)), "s")).find(
      ({ p }) => p! > 0.015 && p! < 0.03,
    )!;
    expect(check.verdict).toBe("look");
    expect(check.words).toMatch(/^Times grew about [1-4]\d % longer from the first to the last \(\d/);
  });

  /** 300 studies of 60 times, growing by a fifth: 285 expected to hold it, 273 to 295 with probability 0.999 (binomial). */
  it("its interval holds the true size in 95 of 100 studies", () => {
    const held = Array.from({ length: 300 }, (_, replication) => {
      const times = drawnTimes(steady, 60, "drift interval", replication);
      const { low, high } = sizeOfDrift(times.map((time, i) => time * 1.2 ** (i / 59)));
      return low <= 1.2 && high >= 1.2;
    }).filter((holds) => holds).length;
    expect(held).toBeGreaterThanOrEqual(273);
    expect(held).toBeLessThanOrEqual(295);
  });

  it("lag-1 correlation, worked by hand", () => {
    // Deviations -1 0 1 0: products 0 + 0 + 0 over 2; and -1.5 -0.5 0.5 1.5: 0.75 - 0.25 + 0.75 over 5.
    expect(lag1Correlation([1, 2, 3, 2])).toBeCloseTo(0, 12);
    expect(lag1Correlation([1, 2, 3, 4])).toBeCloseTo(0.25, 12);
    expect(lag1Correlation([2, 2])).toBeNaN();
  });

  it("the exact law of the number of runs, against Swed and Eisenhart's count of arrangements", () => {
    // 2 above and 2 below: of 6 arrangements 2 have 2 runs, 2 have 3, 2 have 4.
    expect([2, 3, 4].map((runs) => runsTest(runs, 2, 2))).toEqual([
      expect.closeTo(2 / 3, 10),
      1,
      expect.closeTo(2 / 3, 10),
    ]);
    // 5 and 5: P(at most 2 runs) = 2 / 252.
    expect(runsTest(2, 5, 5)).toBeCloseTo(4 / 252, 10);
  });

  it("dependence of neighbours is told, in words for each direction, and by the runs", () => {
    const noise = drawnTimes(steady, 120, "dependence");
    const sticky = noise.map((time, i) => time + (noise[i - 1] ?? 0) + (noise[i - 2] ?? 0));
    expect(dependenceCheck(ended(sticky.slice(2)), "1").words).toMatch(
      /Long times follow long ones.*tell as much as about/,
    );
    expect(runsCheck(ended(sticky.slice(2))).words).toMatch(/come in stretches/);
    const swinging = noise.map((time, i) => 20 + (i % 2 === 0 ? 1 : -1) * time);
    expect(dependenceCheck(ended(swinging), "1").words).toMatch(/Long times follow short ones/);
    expect(runsCheck(ended(swinging)).words).toMatch(/Times alternate/);
  });

  it("says that it was not checked where there is too little", () => {
    for (const check of [
      dependenceCheck(ended([1, 2]), "1"),
      runsCheck(ended([1, 2])),
      dependenceCheck(ended(new Array(20).fill(3)), "1"),
    ]) {
      expect(check).toMatchObject({ verdict: "not checked", p: null });
    }
  });

  /**
   * 400 samples in order. At 0.01: 4 expected, at most 13 with probability 0.9999; at 0.05: 20 expected, at most 37 with
   * probability 0.9998 (binomial).
   */
  it.each([
    ["ended", Number.POSITIVE_INFINITY],
    ["cut off at 10 s, nearly half of them open", 10],
  ])("raises no more false alarms than its levels say, times %s", (_, limit) => {
    const alarms = { strong: [0, 0, 0], any: [0, 0, 0] };
    for (let replication = 0; replication < 400; replication++) {
      const times = cutAt(drawnTimes(steady, 40, "order", replication), limit);
      const checks = [driftCheck(times, "s"), dependenceCheck(times, String(replication)), runsCheck(times)];
      checks.forEach(({ verdict }, i) => {
        if (verdict === "strong") alarms.strong[i]!++;
        if (verdict === "strong" || verdict === "look") alarms.any[i]!++;
      });
    }
    for (const count of alarms.strong) expect(count).toBeLessThanOrEqual(13);
    for (const count of alarms.any) expect(count).toBeLessThanOrEqual(37);
    for (const count of alarms.any.slice(0, 2)) expect(count).toBeGreaterThan(5);
  });
});

describe("the order of the file with open times", () => {
  it("Cox's score, worked by hand", () => {
    // Places 0, 1/2, 1. At 1: mean 1/2, variance 1/6; at 2: mean 3/4, variance 1/16. U = -1/2 - 1/4.
    const times = [1, 2, 3].map((value) => ({ value, open: value === 3 }));
    const { p, ratio, low, high } = censoredTrend(times, 0.95);
    expect(p).toBeCloseTo(2 * cephes.ndtr(-0.75 / Math.sqrt(1 / 6 + 1 / 16)), 10);
    expect([low <= ratio, ratio < 1, high > 1]).toEqual([true, true, true]);
  });

  /** 200 studies: 190 expected to hold it, 179 to 199 with probability 0.998 (binomial). */
  it("the interval holds a true ratio of 3 in 95 of 100 studies, and leaves 1 out just when p is below 0.05", () => {
    let held = 0;
    for (let replication = 0; replication < 200; replication++) {
      const unit = drawnTimes({ family: "exponential", mean: 1 }, 80, "hazards", replication);
      const times = cutAt(
        unit.map((time, i) => (20 * time) / 3 ** (i / 79)),
        12,
      );
      const { p, low, high } = censoredTrend(times, 0.95);
      if (low <= 3 && high >= 3) held++;
      expect(low > 1 || high < 1).toBe(p < 0.05);
    }
    expect(held).toBeGreaterThanOrEqual(179);
    expect(held).toBeLessThanOrEqual(199);
  });

  it("drift is told though half the times are open", () => {
    const unit = drawnTimes({ family: "exponential", mean: 1 }, 120, "wearing out");
    const times = cutAt(
      unit.map((time, i) => (20 * time) / 5 ** (i / 119)),
      8,
    );
    expect(times.filter(({ open }) => open).length).toBeGreaterThan(40);
    const check = driftCheck(times, "min");
    expect(check).toMatchObject({ verdict: "strong", words: expect.stringMatching(/^Times grew shorter.*open times/) });
    expect(driftCheck(times.toReversed(), "min").words).toMatch(/^Times grew longer/);
  });

  it("no ratio is given where times only ever grow: it has no end", () => {
    const times = cutAt(
      Array.from({ length: 20 }, (_, i) => 1 + i),
      15,
    );
    expect(censoredTrend(times, 0.95)).toMatchObject({ ratio: 0, low: 0 });
    expect(driftCheck(times, "min").words).toMatch(/^Times grew longer almost without exception/);
    expect(censoredTrend(times.toReversed(), 0.95)).toMatchObject({ ratio: Infinity, high: Infinity });
    expect(driftCheck(times.toReversed(), "min").words).toMatch(/^Times grew shorter almost without exception/);
  });

  it("log-rank scores, worked by hand", () => {
    // Hazards 1/3 at 1 and 1/1 at 3; the second is open at 2.
    const times = [1, 2, 3].map((value) => ({ value, open: value === 2 }));
    expect(logRankScores(times)).toEqual([
      expect.closeTo(1 / 3 - 1, 12),
      expect.closeTo(1 / 3, 12),
      expect.closeTo(4 / 3 - 1, 12),
    ]);
  });

  it("neighbours that hang together are told, and runs where a median is known", () => {
    const noise = drawnTimes(steady, 122, "dependence");
    const sticky = noise.map((time, i) => time + (noise[i - 1] ?? 0) + (noise[i - 2] ?? 0)).slice(2);
    expect(dependenceCheck(cutAt(sticky, 33), "1").words).toMatch(/^Long times follow long ones.*open times taken in/);
    expect(runsCheck(cutAt(sticky, 33)).words).toMatch(/come in stretches/);
    expect(runsCheck(cutAt(sticky, 22))).toMatchObject({
      verdict: "not checked",
      words: expect.stringMatching(/Too many times are open/),
    });
  });
});

describe("two populations", () => {
  const fitted = (values: readonly number[], name: string) => {
    const family = FAMILIES.find((each) => each.name === name)!;
    return { family, fitted: family.fit(sampleOf(values)) as Fitted };
  };
  const options = { seed: "1", samples: 199, resolution: 0 };

  it("that stand apart are found, with their shares and middles", () => {
    const machine = drawnTimes({ family: "lognormal", mean: 5, cv: 0.1 }, 60, "mixture");
    const hand = drawnTimes({ family: "lognormal", mean: 11, cv: 0.1 }, 30, "mixture");
    const values = [...machine, ...hand];
    const { share, means } = fitMixture(sampleOf(values).ended.map(Math.log));
    expect(share).toBeCloseTo(2 / 3, 6);
    expect(Math.exp(means[0])).toBeCloseTo(5, 0);
    const check = mixtureCheck(sampleOf(values), fitted(values, "gamma"), "s", options);
    expect(check).toMatchObject({
      verdict: "strong",
      words: expect.stringMatching(/67 % around 4\.9\d? s|67 % around 5/),
    });
  });

  it("are not seen in one", () => {
    const values = drawnTimes(steady, 80, "mixture");
    expect(mixtureCheck(sampleOf(values), fitted(values, "lognormal"), "s", options).verdict).toBe("fine");
    const uptimes = drawnTimes({ family: "exponential", mean: 16 }, 80, "mixture");
    expect(mixtureCheck(sampleOf(uptimes), fitted(uptimes, "exponential"), "min", options).verdict).toBe("fine");
  });

  it("are not looked for in few times, or in open ones", () => {
    const few = mixtureCheck(sampleOf(CYCLES.slice(0, 19)), fitted(CYCLES, "gamma"), "s", options);
    expect(few.verdict).toBe("not checked");
    expect(mixtureCheck(sampleOf(CYCLES, [20]), fitted(CYCLES, "gamma"), "s", options).words).toMatch(
      /while times are open/,
    );
  });
});
