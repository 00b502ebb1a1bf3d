import { describe, expect, it } from "vitest";
import { Sampler, uniformStream } from "../../sim/maths/random/index.ts";
import {
  adjustedP,
  bonferroniQuantile,
  estimate,
  exactShareInterval,
  kimNelsonConstants,
  mser,
  mser5,
  pairedTest,
  quantileRanks,
  replicationsNeeded,
  shareInterval,
  studentQuantile,
  studentTwoSidedP,
  welchAverage,
  welchDifference,
} from "../../sim/maths/statistics/index.ts";
import { cephes } from "../support/cephes.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { BASE_SAMPLE, VARIANT_SAMPLE } from "../support/workedSample.ts";
import { STATISTICS } from "./register/statistics.ts";

const checks = new OutsideChecks(STATISTICS);

/** One-sided 0.95, 0.975, 0.995. */
const T_TABLE: [df: number, ...figures: string[]][] = [
  [1, "6.313752", "12.706205", "63.656741"],
  [2, "2.919986", "4.302653", "9.924843"],
  [4, "2.131847", "2.776445", "4.604095"],
  [9, "1.833113", "2.262157", "3.249836"],
  [19, "1.729133", "2.093024", "2.860935"],
  [29, "1.699127", "2.045230", "2.756386"],
  [99, "1.660391", "1.984217", "2.626405"],
];

describe("Student's t", () => {
  it.each(T_TABLE)(`${checks.title("5.t")}: %i degrees of freedom`, (df, ...figures) => {
    [0.95, 0.975, 0.995].forEach((p, i) => {
      const found = studentQuantile(p, df);
      checks.printed("5.t", `t(${p}, ${df})`, found, figures[i]!, 1e-8 * found);
      checks.exact("5.t", `Cephes t(${p}, ${df})`, found, cephes.stdtri(df, p), 1e-7);
    });
  });

  it.each([
    [2.3, 4],
    [8.1, 9],
    [0.4, 37.5],
  ])(`${checks.title("5.p")}: t %d, %d degrees of freedom`, (t, df) => {
    const expected = cephes.incbet(df / 2, 0.5, df / (df + t * t));
    checks.exact("5.p", "two-sided p", studentTwoSidedP(t, df), expected, 1e-6);
  });
});

describe("the worked sample of ten paired replications", () => {
  const base = estimate(BASE_SAMPLE, 0.95)!;
  const variant = estimate(VARIANT_SAMPLE, 0.95)!;
  const difference = estimate(
    VARIANT_SAMPLE.map((value, i) => value - BASE_SAMPLE[i]!),
    0.95,
  )!;

  it(checks.title("5.1"), () => {
    const found = [base.mean, base.sd, base.sd / Math.sqrt(base.n), base.halfWidth!, base.low!, base.high!];
    const figures = ["606", "10.0995049", "3.1937439", "7.2247506", "598.775249", "613.224751"];
    found.forEach((value, i) => {
      checks.printed("5.1", figures[i]!, value, figures[i]!);
    });
    checks.printed("5.1", "relative half-width, %", (100 * base.halfWidth!) / base.mean, "1.19220");
  });

  it(checks.title("5.2"), () => {
    const { t, p } = pairedTest(difference)!;
    const found = [difference.mean, difference.sd, difference.halfWidth!, difference.low!, difference.high!, t];
    const figures = ["6.8", "2.6583203", "1.9016478", "4.898352", "8.701648", "8.089126"];
    found.forEach((value, i) => {
      checks.printed("5.2", figures[i]!, value, figures[i]!);
    });
    checks.exact("5.2", "p", p, 2.02576e-5, 3e-6);
  });

  it(checks.title("5.3"), () => {
    const found = welchDifference(VARIANT_SAMPLE, BASE_SAMPLE, 0.95)!;
    checks.printed("5.3", "df", found.df, "17.900885");
    checks.printed("5.3", "t", found.t, "1.448449");
    checks.printed("5.3", "p", found.p, "0.164782");
    checks.printed("5.3", "low", found.low, "-3.067068");
    checks.printed("5.3", "high", found.high, "16.667068");
  });

  it(checks.title("5.4"), () => {
    const [x, y, d] = [base.sd ** 2, variant.sd ** 2, difference.sd ** 2];
    checks.printed("5.4", "variance paired", d, "7.066667");
    checks.printed("5.4", "variance unpaired", x + y, "220.4");
    checks.printed("5.4", "correlation", (x + y - d) / (2 * base.sd * variant.sd), "0.970628");
  });

  it(checks.title("5.5"), () => {
    checks.exact("5.5", "replications", replicationsNeeded(3, base.sd, 10, 0.95), 58, 0);
    checks.printed("5.5", "before rounding up", ((studentQuantile(0.975, 9) * base.sd) / 3) ** 2, "57.996690");
  });
});

describe("families of comparisons", () => {
  it(checks.title("5.6"), () => {
    checks.printed("5.6", "t", bonferroniQuantile(4, 0.95, 9), "3.110935");
  });

  it(checks.title("5.7"), () => {
    const found = adjustedP([0.012, 0.041, 0.003, 0.2, 0.018]);
    const expected = {
      bonferroni: [0.06, 0.205, 0.015, 1, 0.09],
      holm: [0.048, 0.082, 0.015, 0.2, 0.054],
      benjaminiHochberg: [0.03, 0.05125, 0.015, 0.2, 0.03],
    };
    for (const method of ["bonferroni", "holm", "benjaminiHochberg"] as const) {
      expected[method].forEach((value, i) => {
        checks.exact("5.7", `${method} ${i}`, found[method][i]!, value, 1e-12);
      });
    }
  });

  it.each([
    [2, 10, "0.334050", "6.012905"],
    [5, 10, "0.634967", "11.429411"],
    [10, 20, "0.302934", "11.511485"],
  ])(`${checks.title("5.23")}: %i systems, first stage %i`, (k, n0, eta, hSquared) => {
    const found = kimNelsonConstants(k, n0, 0.05);
    checks.printed("5.23", "eta", found.eta, eta);
    checks.printed("5.23", "h squared", found.hSquared, hSquared);
  });
});

describe("intervals without a law, and for shares", () => {
  it.each([
    ["5.8", 20, 0.5, 6, 15, "0.958611"],
    ["5.9", 100, 0.9, 84, 96, "0.955690"],
  ])(
    "%s order statistics round a quantile (binomial, Conover 1999; V-num): n %i, p %d",
    (id, n, p, low, high, cover) => {
      const found = quantileRanks(n, p, 0.95)!;
      checks.exact(id, "low rank", found.low, low, 0);
      checks.exact(id, "high rank", found.high, high, 0);
      checks.printed(id, "cover", found.cover, cover);
      checks.exact(id, "cover by Cephes", found.cover, cephes.bdtr(high - 1, n, p) - cephes.bdtr(low - 1, n, p), 1e-10);
    },
  );

  it.each([
    [7, 40, 0.95],
    [81, 263, 0.95],
    [3, 500, 0.99],
  ])(`${checks.title("5.w")}: %i of %i at %d`, (count, n, confidence) => {
    const found = shareInterval(count, n, confidence)!;
    const z = cephes.ndtri((1 + confidence) / 2);
    // Wilson's bounds are the shares s at which the count lies just z standard errors of s away.
    for (const bound of [found.low, found.high]) {
      const distance = Math.abs(count / n - bound) / Math.sqrt((bound * (1 - bound)) / n);
      checks.exact("5.w", `bound ${bound}`, distance, z, 1e-8);
    }
  });

  it.each([
    [7, 40, 0.95],
    [81, 263, 0.95],
    [3, 500, 0.99],
  ])(`${checks.title("5.c")}: %i of %i at %d`, (count, n, confidence) => {
    const found = exactShareInterval(count, n, confidence)!;
    const tail = (1 - confidence) / 2;
    checks.exact("5.c", "low", found.low, cephes.incbi(count, n - count + 1, tail), 1e-6);
    checks.exact("5.c", "high", found.high, cephes.incbi(count + 1, n - count, 1 - tail), 1e-6);
  });

  it(checks.title("5.10"), () => {
    const sampler = new Sampler({ family: "normal", mean: 100, sd: 10 }, uniformStream("5.10", 0, "cover", "draw"));
    let covered = 0;
    for (let interval = 0; interval < 2_000; interval++) {
      const { low, high } = estimate(
        Array.from({ length: 10 }, () => sampler.draw()),
        0.95,
      )!;
      if (low! <= 100 && high! >= 100) covered++;
    }
    // The middle of 1867 .. 1931, which covers with probability 0.999.
    checks.chance("5.10", `covered ${covered} of 2000`, Math.abs(covered - 1899), 32);
  });
});

const RISING = [
  ...[0, 1, 1, 2, 3, 3, 4, 5, 5, 6, 6, 7, 6, 8, 7, 8, 7, 9, 8, 8, 9, 8, 7, 9, 10, 8, 9, 10, 9, 8],
  ...[7, 9, 8, 10, 9, 9, 8, 10, 8, 9, 10, 9, 8, 9, 7, 8, 9, 9, 10, 8, 9, 10, 8, 8, 9, 8, 7, 9, 10, 9],
];

describe("warm-up", () => {
  it(checks.title("5.30"), () => {
    const found = mser5(RISING)!;
    const figures = ["0.40240741", "0.13974455", "0.03504000", "0.00636488", "0.00125000", "0.00139942"];
    figures.forEach((figure, d) => {
      checks.printed("5.30", `MSER(${d})`, found.statistics[d]!, figure);
    });
    checks.exact("5.30", "deleted", found.deleted, 20, 0);
    checks.exact("5.30", "kept mean", found.keptMean, 8.7, 1e-12);
    expect(found.runTooShort).toBe(false);
  });

  it(checks.title("5.33"), () => {
    const found = mser(RISING)!;
    checks.exact("5.33", "deleted", found.deleted, 13, 0);
    checks.printed("5.33", "least", found.statistic, "0.0178765784");
    checks.printed("5.33", "kept mean", found.keptMean, "8.574468");
  });

  it(checks.title("5.35"), () => {
    const runs = [
      [2, 4, 5, 6, 6, 7, 7, 7, 8, 7],
      [1, 3, 5, 5, 7, 6, 8, 7, 7, 8],
      [0, 3, 4, 6, 6, 7, 7, 8, 7, 7],
    ];
    const { smoothed } = welchAverage(runs, 2);
    ["1", "3", "4.2", "5.333333", "6.133333", "6.666667", "7", "7.2"].forEach((figure, i) => {
      checks.printed("5.35", `smoothed ${i}`, smoothed[i]!, figure, 1e-12);
    });
  });
});

checks.close();
