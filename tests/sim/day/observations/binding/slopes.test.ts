import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runDay } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { accountedSeconds, slopeIn, slopesOf, slopesThatHold } from "../../../../../sim/day/observations/index.ts";
import { momentsOf } from "../../../../support/agreesWith.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import { cephes } from "../../../../support/cephes.ts";
import { slopeAndDifference } from "../../../../support/finiteDifference.ts";
import { planOf, saturated, station } from "../../../../support/plans.ts";
import { slopeLines } from "../../../../support/slopeLines.ts";

const LINES = fc.sample(slopeLines, { seed: 7, numRuns: 50 });
const DAYS = 24;
const STEP = 0.05;

describe("slopes from one run", () => {
  // 100 checks: two on each of fifty lines. Each would err with probability 0.05 if slope and difference agreed in the
  // mean, so more than 14 err with probability 0.0005 (binomial); the largest |t| exceeds the Bonferroni bound with
  // probability 0.001.
  it("agree with central differences on the same random numbers, on fifty random lines (overall error probability 0.0015)", () => {
    const found = LINES.flatMap((plan, number) => {
      const slopes = slopesThatHold(plan);
      return [number % slopes.length, (7 * number + 3) % slopes.length].map((row) => {
        const slope = slopes[row]!;
        const pairs = slopeAndDifference(plan, slope, `line ${number}`, DAYS, STEP);
        const gap = momentsOf(pairs.map((pair) => pair.slope - pair.difference));
        const size = Math.abs(momentsOf(pairs.map((pair) => pair.slope)).mean);
        return {
          t: gap.standardError > 0 ? Math.abs(gap.mean) / gap.standardError : 0,
          error: gap.standardError,
          size,
        };
      });
    });
    expect(found.length).toBe(100);
    const beyond = found.filter(({ t }) => t > cephes.stdtri(DAYS - 1, 0.975)).length;
    expect(beyond).toBeLessThanOrEqual(14);
    expect(Math.max(...found.map(({ t }) => t))).toBeLessThan(cephes.stdtri(DAYS - 1, 1 - 0.001 / 200));
    // Agreement shows something: summed over all checks the errors are small against the slopes.
    const sum = (list: number[]) => list.reduce((total, value) => total + value, 0);
    expect(sum(found.map(({ error }) => error))).toBeLessThan(0.2 * sum(found.map(({ size }) => size)));
  }, 240_000);

  it("obey Euler's identity: mean x slope, summed over all times, is the time itself", () => {
    for (const plan of LINES) {
      const day = runDay(compileLine(plan), { seed: "euler", replication: 0, binding: true });
      const sum = slopesOf(plan).reduce((total, slope) => total + slope.meanSeconds * slopeIn(day, slope)!, 0);
      expect(sum).toBeCloseTo(accountedSeconds(day), 5);
    }
  });

  it("of a repair take their own failure's seconds only; of an uptime the same, the other way", () => {
    const breakdowns = [breakdown(30, 6), breakdown(40, 9, { name: "blade" })];
    const plan = planOf(saturated(200), [station("a", 2, { breakdowns })]);
    const day = runDay(compileLine(plan), { seed: "repairs", replication: 0, binding: true });
    const seconds = (detail: string) =>
      day.binding!.day.find((cell) => cell.cause === "repair" && cell.detail === detail)!.seconds;
    const of = (parameter: string, detail: string) =>
      slopeIn(day, slopesOf(plan).find((slope) => slope.parameter === parameter && slope.detail === detail)!);
    expect(seconds("jam")).not.toBe(seconds("blade"));
    expect(of("repair time", "jam")).toBeCloseTo(seconds("jam") / 6, 9);
    expect(of("uptime", "blade")).toBeCloseTo(-seconds("blade") / 40, 9);
  });

  it("of a load are 1 when the day begins with its arrival, and 0 when others come later", () => {
    // See the binding path's own test: the last lorry is waited for.
    const cells = [{ cause: "load" as const, stage: "", detail: "late", seconds: 100 }];
    const slope = { parameter: "arrival" as const, stage: "", meanSeconds: 0, withheld: null };
    const of = (detail: string) => ({
      ...slope,
      detail,
      weight: (cell: { detail: string }) => +(cell.detail === detail),
    });
    const plan = planOf(saturated(1), [station("a", 1)]);
    const day = runDay(compileLine(plan), { seed: "x", replication: 0, binding: true });
    const late = { ...day, binding: { ...day.binding!, work: cells } };
    expect([slopeIn(late, of("late")), slopeIn(late, of("early"))]).toEqual([1, 0]);
    expect(slopeIn({ ...day, binding: null }, of("late"))).toBeNull();
  });
});
