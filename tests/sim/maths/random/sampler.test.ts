import { describe, expect, it } from "vitest";
import {
  meanOf,
  Sampler,
  type UniformStream,
  uniformStream,
  type Varying,
} from "../../../../sim/maths/random/index.ts";

const FAMILIES: Varying[] = [
  { family: "constant", value: 4.2 },
  { family: "exponential", mean: 5.5 },
  { family: "lognormal", mean: 5.5, cv: 0.3 },
  { family: "gamma", mean: 5.5, cv: 0.3 },
  { family: "weibull", mean: 5.5, cv: 1.4 },
  { family: "erlang", mean: 6, k: 3 },
  { family: "uniform", min: 2, max: 5 },
  { family: "triangular", min: 3, mode: 5, max: 10 },
  { family: "pert", min: 2, mode: 3, max: 7 },
  { family: "normal", mean: 2, sd: 2 },
  { family: "empirical", values: [3, 1, 2, 2] },
];

/** Mean by the midpoint rule over the quantile function: no randomness. */
function meanByQuadrature(varying: Varying): number {
  const sampler = new Sampler(varying, uniformStream("s", 0, "a", "b"));
  const steps = 200_000;
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += sampler.quantile((step + 0.5) / steps);
  return sum / steps;
}

class CountingStream implements UniformStream {
  draws = 0;
  next(): number {
    this.draws++;
    return 0.25;
  }
  fill(values: Float64Array, from: number, to: number): void {
    for (let at = from; at < to; at++) values[at] = this.next();
  }
}

describe("Sampler", () => {
  for (const varying of FAMILIES) {
    it(`has the mean that meanOf states for ${varying.family}`, () => {
      expect(Math.abs(meanByQuadrature(varying) / meanOf(varying) - 1)).toBeLessThan(5e-5);
    });

    it(`takes one uniform per variate for ${varying.family} (none for a constant)`, () => {
      const uniforms = new CountingStream();
      const sampler = new Sampler(varying, uniforms);
      sampler.draw();
      sampler.draw();
      expect(uniforms.draws).toBe(varying.family === "constant" ? 0 : 2);
    });

    it(`draws in a row what it draws one by one (${varying.family})`, () => {
      const inRow = new Float64Array(200).fill(-1);
      const stream = (mirrored: boolean) => uniformStream("s", 0, "a", "b", mirrored);
      for (const mirrored of [false, true]) {
        new Sampler(varying, stream(mirrored)).drawInto(inRow, 3, 200);
        const sampler = new Sampler(varying, stream(mirrored));
        expect([...inRow]).toEqual([-1, -1, -1, ...Array.from({ length: 197 }, () => sampler.draw())]);
      }
    });

    it(`gives larger values for larger uniforms (${varying.family})`, () => {
      const sampler = new Sampler(varying, uniformStream("s", 0, "a", "b"));
      const values = [0, 0.01, 0.2, 0.5, 0.8, 0.99, 1].map((u) => sampler.quantile(u));
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(values[0]).toBeGreaterThanOrEqual(0);
    });
  }

  it("agrees with SciPy's quantiles of a triangular 3, 5, 10 time", () => {
    const sampler = new Sampler({ family: "triangular", min: 3, mode: 5, max: 10 }, uniformStream("s", 0, "a", "b"));
    const found = [0.01, 0.05, 0.5, 0.95, 0.99].map((u) => sampler.quantile(u));
    [3.374166, 3.83666, 5.8167, 8.677124, 9.408392].forEach((expected, index) => {
      expect(Math.abs(found[index]! - expected)).toBeLessThanOrEqual(0.51e-6);
    });
  });

  it("draws each observed value equally often when empirical, without changing the caller's list", () => {
    const values = Object.freeze([3, 1, 2, 2]) as unknown as number[];
    const sampler = new Sampler({ family: "empirical", values }, uniformStream("s", 0, "a", "b"));
    expect([0, 0.24, 0.25, 0.5, 0.74, 0.75, 1].map((u) => sampler.quantile(u))).toEqual([1, 1, 2, 2, 2, 3, 3]);
  });

  it("treats limits that meet and a spread of 0 as a constant", () => {
    for (const varying of [
      { family: "uniform", min: 4, max: 4 },
      { family: "triangular", min: 4, mode: 4, max: 4 },
      { family: "pert", min: 4, mode: 4, max: 4 },
      { family: "normal", mean: 4, sd: 0 },
      { family: "gamma", mean: 4, cv: 0 },
    ] satisfies Varying[]) {
      expect(new Sampler(varying, uniformStream("s", 0, "a", "b")).draw()).toBe(4);
    }
  });
});

describe("meanOf", () => {
  it("states the mean of a normal after the cut at 0 (normal(5, 2) and normal(2, 2), recomputed with SciPy)", () => {
    expect(Math.abs(meanOf({ family: "normal", mean: 5, sd: 2 }) - 5.035276)).toBeLessThan(0.51e-6);
    expect(Math.abs(meanOf({ family: "normal", mean: 2, sd: 2 }) - 2.5752)).toBeLessThan(0.51e-6);
  });
});
