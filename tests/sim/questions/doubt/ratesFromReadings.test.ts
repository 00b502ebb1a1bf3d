import { describe, expect, it } from "vitest";
import { factorsAt, readPlan } from "../../../../sim/asked/plan/index.ts";
import { latinHypercube } from "../../../../sim/asked/study/index.ts";
import { jStat } from "../../../../sim/maths/numeric/index.ts";
import { unitQuantile } from "../../../../sim/maths/random/index.ts";
import { quantile, varianceComponents } from "../../../../sim/maths/statistics/index.ts";
import { fitColumn, readTimes, uncertainEntries } from "../../../../sim/questions/fit/index.ts";
import { doubtPlan, doubtStudy, readDoubt, reckonedDoubt } from "../../../support/doubtCase.ts";

/**
 * Mean time of exponential readings, as a multiple of the one they gave, after n of them: n / Gamma(n, 1), the posterior
 * with prior 1 / rate; its interval is the chi-square interval of the frequentist (any text). Slices, each as likely.
 */
function posterior(n: number, slices: number): number[] {
  return Array.from({ length: slices }, (_, slice) => n / jStat.gamma.inv(1 - (slice + 0.5) / slices, n, 1));
}

const figure = (name: string, path: string, n: number) => ({
  ...{ name, paths: [path], kind: "measured", readings: n },
  factor: { draws: posterior(n, 1000).map((factor) => Number(factor.toPrecision(6))) },
});

const figures = [figure("arrivals", "line.hanging.cycle", 100), figure("service", "line.skinning.cycle", 100)];

/** Heads in an M/M/1 queue, load 0.5 by the readings: L = rho / (1 - rho). No load comes to 0.95 here. */
function present([arrivals, service]: readonly number[]): number {
  const load = (0.5 * service!) / arrivals!;
  return load / (1 - load);
}

describe("a queue whose rates are known from 100 readings each (quadrature, check values 1.15 and 1.20)", () => {
  it("has the mean, variance and interval of the heads present: 1.0703, 0.1294, 0.6094 to 1.9431 (false alarm 0.003)", () => {
    const { plan } = readPlan(doubtPlan(...figures));
    const columns = latinHypercube(2, 20_000, "queue");
    const heads = columns[0]!.map((_, world) =>
      present(plan!.uncertain!.map((each, index) => factorsAt(each, columns[index]![world]!)[0]!)),
    );
    const { mean, between, within } = varianceComponents(
      heads.map((value) => [value, value]),
      0.95,
    );
    // The spread is 0.36, its square's own spread 0.6 about: of 20,000 worlds 0.0025 and 0.0042, times 3.29.
    expect(Math.abs(mean - 1.070291668)).toBeLessThan(0.0084);
    expect(Math.abs(between - 0.129416996)).toBeLessThan(0.0138);
    expect(within).toBe(0);
    const sorted = heads.toSorted((a, b) => a - b);
    expect(Math.abs(quantile(sorted, 0.025)! / 0.6094216 - 1)).toBeLessThan(0.015);
    expect(Math.abs(quantile(sorted, 0.5)! / 0.9999998 - 1)).toBeLessThan(0.01);
    expect(Math.abs(quantile(sorted, 0.975)! / 1.943076 - 1)).toBeLessThan(0.025);
  });

  it("is shared out in 0.439 by the arrivals, 0.477 by the service, 0.084 by both together (false alarm 0.003)", () => {
    const study = doubtStudy(doubtPlan(...figures), [], { responses: ["finish"], confidence: 0.999 });
    const { question } = readDoubt(study, { worlds: 400, days: 2, seed: "queue" });
    const doubt = reckonedDoubt(question!, (_, factors) => present(factors));
    const found = doubt.estimates[0]![0]!;
    const shares = [...found.figures.map(({ share }) => share!), doubt.joint!.pairs[0]!.share];
    for (const [index, exact] of [0.439, 0.477, 0.084].entries()) {
      expect(shares[index]!.low).toBeLessThanOrEqual(exact);
      expect(shares[index]!.high).toBeGreaterThanOrEqual(exact);
      expect(Math.abs(shares[index]!.value - exact)).toBeLessThan(0.15);
    }
    // 320 more readings of a rate leave less than a quarter of its variance, so they bring most of what knowing it would.
    const step = doubt.readings[1]!.steps.find(({ readings }) => readings === 320)!;
    expect(step.left).toBeCloseTo(Math.sqrt(100 / 420), 12);
    expect(step.narrower).toBeLessThan(found.figures[1]!.narrower);
    expect(step.narrower).toBeGreaterThan(0.5 * found.figures[1]!.narrower);
  });
});

it("what fit writes of exponential readings is the posterior's range within 3 %", () => {
  const times = Array.from({ length: 100 }, (_, time) => {
    const u = (time + 0.5) / 100;
    return 10 * -Math.log(1 - u);
  });
  const { columns } = readTimes(`"skinning: jam uptime (min)"\n${times.map((time) => time.toFixed(4)).join("\n")}\n`, {
    unit: null,
    by: null,
  });
  const fits = columns!.map((column) => fitColumn(column, { seed: "1", samples: 99 }));
  const [entry] = uncertainEntries(fits, "stops.csv", "1");
  expect(entry).toMatchObject({ readings: 100 });
  const { cv } = entry!.factor.lognormal;
  const [low, high] = [false, true].map((upper) => unitQuantile({ family: "lognormal", cv }, 0.025, upper));
  // Chi-square with 200 degrees of freedom.
  expect(Math.abs(low! / (100 / jStat.gamma.inv(0.975, 100, 1)) - 1)).toBeLessThan(0.03);
  expect(Math.abs(high! / (100 / jStat.gamma.inv(0.025, 100, 1)) - 1)).toBeLessThan(0.03);
});
