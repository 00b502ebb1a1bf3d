import { describe, it } from "vitest";
import { Sampler, uniformStream, type Varying } from "../../sim/maths/random/index.ts";
import { textbook } from "../oracle/distributionFunctions.ts";
import { kolmogorovBeyond, kolmogorovDistance } from "../oracle/kolmogorov.ts";
import { FALSE_ALARM } from "../support/agreesWith.ts";
import { cephes } from "../support/cephes.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { DISTRIBUTIONS } from "./register/distributions.ts";

const checks = new OutsideChecks(DISTRIBUTIONS);
const REPLICATIONS = 20;
const DRAWS = 20_000;

const LAWS: Varying[] = [
  { family: "exponential", mean: 5.5 },
  { family: "lognormal", mean: 5.5, cv: 0.3 },
  { family: "lognormal", mean: 5.5, cv: 0.9 },
  { family: "gamma", mean: 5.5, cv: 0.3 },
  { family: "gamma", mean: 5.5, cv: 1.6 },
  { family: "weibull", mean: 5.5, cv: 0.3 },
  { family: "weibull", mean: 5.5, cv: 1.3 },
  { family: "erlang", mean: 6, k: 3 },
  { family: "uniform", min: 2, max: 5 },
  { family: "triangular", min: 3, mode: 5, max: 10 },
  { family: "pert", min: 2, mode: 3, max: 7 },
  { family: "normal", mean: 5, sd: 2 },
  { family: "normal", mean: 2, sd: 2 },
];

function samples(varying: Varying): number[][] {
  return Array.from({ length: REPLICATIONS }, (_, replication) => {
    const sampler = new Sampler(varying, uniformStream("distributions", replication, JSON.stringify(varying), "work"));
    return Array.from({ length: DRAWS }, () => sampler.draw());
  });
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

describe("what the samplers draw against the textbook", () => {
  it.each(LAWS)(`${checks.title("D.1")}: %j`, (varying) => {
    const { cdf, mean, variance } = textbook(varying);
    const drawn = samples(varying);
    checks.simulated("D.1", `mean of ${varying.family}`, drawn.map(meanOf), mean);
    const spreads = drawn.map((values) => meanOf(values.map((value) => (value - mean) ** 2)));
    // Fourth moments decide: a few per cent for the long tails.
    checks.simulated("D.1", `variance of ${varying.family}`, spreads, variance, { relative: 0.02 });
    const { distance, n } = kolmogorovDistance(drawn.flat(), cdf);
    checks.chance("D.1", `shape of ${varying.family}`, FALSE_ALARM, kolmogorovBeyond(Math.sqrt(n) * distance));
  });

  it(checks.title("D.2"), () => {
    const values = [4, 4.5, 5, 5.5, 7];
    const counts = new Map(values.map((value) => [value, 0]));
    const drawn = samples({ family: "empirical", values }).flat();
    for (const value of drawn) counts.set(value, counts.get(value)! + 1);
    const expected = drawn.length / values.length;
    const chiSquare = [...counts.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
    checks.chance("D.2", "frequencies", FALSE_ALARM, cephes.chdtrc(values.length - 1, chiSquare));
    checks.exact("D.2", "values drawn", counts.size, values.length, 0);
  });
});

describe("streams of uniforms", () => {
  const N = 100_000;
  const uniforms = (replication: number, owner: string, purpose: string, seed = "streams") => {
    const stream = uniformStream(seed, replication, owner, purpose);
    return Array.from({ length: N }, () => stream.next());
  };
  const first = uniforms(0, "stunning", "work");

  it(checks.title("D.3"), () => {
    const { distance, n } = kolmogorovDistance(first, (x) => x);
    checks.chance("D.3", "uniform", FALSE_ALARM, kolmogorovBeyond(Math.sqrt(n) * distance));
    const others = [
      uniforms(1, "stunning", "work"),
      uniforms(0, "sticking", "work"),
      uniforms(0, "stunning", "travel"),
      uniforms(0, "stunning", "work", "another seed"),
      [...first.slice(1), first[0]!],
    ];
    others.forEach((other, i) => {
      // Correlation of independent uniforms: mean 0, standard deviation 1 / sqrt(N).
      const correlation = 12 * meanOf(first.map((u, k) => (u - 0.5) * (other[k]! - 0.5)));
      const p = 2 * cephes.ndtr(-Math.abs(correlation) * Math.sqrt(N));
      checks.chance("D.3", `stream ${i} has nothing in common`, FALSE_ALARM, p);
    });
  });

  it(checks.title("D.4"), () => {
    const plain = uniformStream("streams", 0, "stunning", "work");
    const mirrored = uniformStream("streams", 0, "stunning", "work", true);
    let worst = 0;
    for (let draw = 0; draw < 1_000; draw++) worst = Math.max(worst, Math.abs(plain.next() + mirrored.next() - 1));
    checks.exact("D.4", "u + mirrored u", worst, 0, 1e-15);
  });
});

const QUANTILES: [varying: Varying, ...figures: string[]][] = [
  [{ family: "lognormal", mean: 5.5, cv: 0.3 }, "2.661090", "3.250456", "5.268045", "8.537968", "10.428921"],
  [{ family: "gamma", mean: 5.5, cv: 0.3 }, "2.397529", "3.094926", "5.335909", "8.465061", "10.045983"],
  [{ family: "weibull", mean: 5.5, cv: 0.3 }, "1.765632", "2.738481", "5.520628", "8.187590", "9.192633"],
  [{ family: "triangular", min: 3, mode: 5, max: 10 }, "3.374166", "3.836660", "5.816700", "8.677124", "9.408392"],
  [{ family: "pert", min: 2, mode: 3, max: 7 }, "2.115673", "2.294887", "3.383361", "5.106384", "5.742797"],
  [{ family: "erlang", mean: 6, k: 3 }, "0.872090", "1.635383", "5.348121", "12.591587", "16.811894"],
  [{ family: "normal", mean: 5, sd: 2 }, "0.718523", "1.819677", "5.015565", "8.295743", "9.657368"],
  [{ family: "normal", mean: 2, sd: 2 }, "0.068373", "0.321913", "2.400347", "5.454370", "6.780937"],
];

describe("quantiles by inversion", () => {
  it.each(QUANTILES)(`${checks.title("D.5")}: %j`, (varying, ...figures) => {
    const sampler = new Sampler(varying, uniformStream("quantiles", 0, "a", "work"));
    [0.01, 0.05, 0.5, 0.95, 0.99].forEach((p, i) => {
      const found = sampler.quantile(p);
      // The table's own stated error is 1e-8 of the value here.
      checks.printed("D.5", `${varying.family} ${p}`, found, figures[i]!, 1e-8 * found);
    });
  });

  it(checks.title("6.5"), () => {
    const found = [1.223848, 1.358099, 1.627624].map(kolmogorovBeyond);
    [0.1, 0.05, 0.01].forEach((p, i) => {
      checks.exact("6.5", `P(sqrt(n) D) ${p}`, found[i]!, p, 5e-6);
    });
  });
});

checks.close();
