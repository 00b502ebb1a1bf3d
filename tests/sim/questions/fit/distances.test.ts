import { describe, expect, it } from "vitest";
import { distances } from "../../../../sim/questions/fit/distances.ts";
import { exponentialLaw } from "../../../../sim/questions/fit/families/exponential.ts";
import { kaplanMeier } from "../../../../sim/questions/fit/kaplanMeier.ts";
import { sampleOf } from "../../../../sim/questions/fit/sample.ts";
import { kolmogorovDistance } from "../../../oracle/kolmogorov.ts";
import { CYCLES, UPTIMES } from "../../../support/timeStudies.ts";

const law = exponentialLaw(7);

describe("distances", () => {
  it("without open times are the textbook's, from its sum over ranks (Anderson and Darling 1954)", () => {
    const sample = sampleOf(CYCLES);
    const n = CYCLES.length;
    const u = [...sample.ended].map(law.below);
    const sum = u.reduce((total, below, i) => total + (2 * i + 1) * (Math.log(below) + Math.log(1 - u[n - 1 - i]!)), 0);
    const { kolmogorov, andersonDarling } = distances(law, sample);
    expect(andersonDarling).toBeCloseTo(-n - sum / n, 10);
    expect(kolmogorov).toBeCloseTo(kolmogorovDistance(CYCLES, law.below).distance, 14);
  });

  it("with open times reach up to the longest one watched", () => {
    const up = exponentialLaw(430);
    const sample = sampleOf([100, 300], [600]);
    const [a, b, end] = [100, 300, 600].map(up.below) as [number, number, number];
    // By numbers: n times the integral of (F_n - u)^2 / (u (1 - u)) from 0 to F(600), in steps between the jumps.
    const piece = (from: number, to: number, share: number) => {
      const steps = 100_000;
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        const u = from + ((i + 0.5) / steps) * (to - from);
        sum += ((share - u) ** 2 / (u * (1 - u))) * ((to - from) / steps);
      }
      return sum;
    };
    const expected = 3 * (piece(0, a, 0) + piece(a, b, 1 / 3) + piece(b, end, 2 / 3));
    expect(distances(up, sample).andersonDarling).toBeCloseTo(expected, 6);
    expect(distances(up, sample).kolmogorov).toBeCloseTo(
      Math.max(a, Math.abs(1 / 3 - b), Math.abs(2 / 3 - b), end - 2 / 3),
      12,
    );
  });

  it("stay finite where a value lies beyond everything the law allows", () => {
    expect(Number.isFinite(distances(law, sampleOf([1, 2, 1e6])).andersonDarling)).toBe(true);
  });
});

describe("kaplanMeier", () => {
  it("has steps of 1 / n without open times, equal ones joined, and ends at 1 exactly", () => {
    expect(kaplanMeier(sampleOf([3, 1, 1, 2]))).toEqual([
      { time: 1, before: 0, after: 0.5 },
      { time: 2, before: 0.5, after: 0.75 },
      { time: 3, before: 0.75, after: 1 },
    ]);
  });

  it("passes the share of open times on to longer ones (worked by hand)", () => {
    const steps = kaplanMeier(sampleOf([1, 3, 5], [2, 5]));
    // 5 at risk, then 3 (one left at 2), then 2 of which one is open at 5 itself and lasts longer.
    expect(steps.map(({ after }) => after)).toEqual(
      [1 / 5, 1 - (4 / 5) * (2 / 3), 1 - (4 / 5) * (2 / 3) * (1 / 2)].map((x) => expect.closeTo(x, 12)),
    );
  });

  it("never reaches 1 when the longest times are open", () => {
    expect(kaplanMeier(sampleOf(UPTIMES.ended, UPTIMES.open)).at(-1)!.after).toBeCloseTo(9 / 12, 12);
  });
});
