import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Plan } from "../../sim/asked/plan/index.ts";
import { runDay } from "../../sim/day/engine/index.ts";
import { compileLine } from "../../sim/day/line/index.ts";
import { slopeIn, slopesOf, slopesThatHold } from "../../sim/day/observations/index.ts";
import { breakdown } from "../support/breakdowns.ts";
import { pairsOf } from "../support/finiteDifference.ts";
import { crew, dwell, exponential, manual, pause, planOf, saturated, station } from "../support/plans.ts";
import { slopePlan } from "../support/slopePlans.ts";
import { compare, LIMIT, slopesToCompare } from "./slopeProof.ts";

/** The small version of `npx tsx tests/proofs/slopes.ts`; see README.md here. */
describe("slopes that are given, on random plans with every feature", () => {
  it("are the exact derivative of each single day: a step too small for any jump finds the same", () => {
    let days = 0;
    for (const plan of fc.sample(slopePlan, { seed: 5, numRuns: 60 })) {
      const slopes = slopesThatHold(plan);
      for (const [row, pairs] of (pairsOf(plan, slopes, "exact", 4, 1e-7) ?? []).entries()) {
        for (const { slope, difference } of pairs) {
          days++;
          const gap = Math.abs(slope - difference) / (1 + Math.abs(slope));
          expect(gap, `${slopes[row]!.parameter} ${slopes[row]!.stage}`).toBeLessThan(1e-3);
        }
      }
    }
    expect(days).toBeGreaterThan(800);
  }, 240_000);

  // About 200 comparisons, each beyond the limit by chance with probability 0.002 (Student, 39 degrees of freedom): more
  // than 2 of them with probability 0.01. A shown difference of the other sign has probability below 0.001.
  it("are the slope of the mean: central differences of 2 % agree, signs as well (error probability 0.01)", () => {
    const found = fc.sample(slopePlan, { seed: 1, numRuns: 46 }).flatMap((plan, number) => {
      return compare(plan, `slopes ${number}`, slopesToCompare(plan, false), 40, 0.02) ?? [];
    });
    expect(found.length).toBeGreaterThan(190);
    expect(found.filter(({ isShown }) => isShown).length).toBeGreaterThan(100);
    expect(found.filter(({ t }) => t > LIMIT).length).toBeLessThanOrEqual(2);
    expect(found.filter(({ wrongSign }) => wrongSign)).toEqual([]);
  }, 240_000);
});

describe("slopes that are withheld would be wrong", () => {
  it("with breakdowns by the clock: twice too small for repairs, a third too great for the work", () => {
    const jam = breakdown(0, 0, { clock: "calendar", uptimeSeconds: exponential(120), repairSeconds: exponential(40) });
    const plan = planOf(saturated(200), [
      station("stunning", exponential(4), { breakdowns: [jam] }),
      station("skinning", exponential(6), { buffer: 3, breakdowns: [jam] }),
    ]);
    expect(slopesThatHold(plan)).toEqual([]);
    const [cycle, repair] = compare(plan, "calendar", slopesOf(plan), 200, 0.1)!;
    expect(cycle!.slope).toMatchObject({ parameter: "cycle time", stage: "stunning" });
    expect(cycle!.t).toBeGreaterThan(LIMIT);
    expect(cycle!.found / cycle!.difference).toBeGreaterThan(1.2);
    expect(repair!.t).toBeGreaterThan(LIMIT);
    expect(repair!.found / repair!.difference).toBeLessThan(0.6);
  }, 120_000);

  it("with a planned safe stop: the path promises an earlier end, and a hundredth of a second less ends the day later", () => {
    expect(slopesThatHold(withSafeStop(11))).toEqual([]);
    // The one case with a wrong sign for a hundredth among twelve times of the break and four days each: it shows that this
    // happens, not how often. On most of the others a second less brings nearly what the path promises.
    const hanging = slopesOf(withSafeStop(11))[0]!;
    const dayWith = (seconds: number) => {
      return runDay(compileLine(withSafeStop(seconds)), { seed: "safe", replication: 1, binding: true });
    };
    const today = dayWith(11);
    expect(slopeIn(today, hanging)!).toBeGreaterThan(55);
    expect(dayWith(10.99).workFinishSeconds).toBeGreaterThan(today.workFinishSeconds + 0.9);
  });
});

/** Hanging, so many seconds a head, begins no head when the break is due; the others go when the stretch is empty. */
function withSafeStop(hangingSeconds: number): Plan {
  const about = (mean: number) => ({ family: "lognormal" as const, mean, cv: 0.05 });
  const crews = ["hangers", "stickers", "dressers"];
  const line = [
    manual("hanging", about(hangingSeconds), "hangers"),
    station("stunning", about(9), { buffer: 2 }),
    manual("sticking", about(9), "stickers", { buffer: 1 }),
    dwell("bleeding", 120, 20),
    manual("dressing", about(10), "dressers", { buffer: 4 }),
  ];
  const plan = planOf(saturated(60), line, { crews: crews.map((name) => crew(name, 1)) });
  const breaks = [pause("tea", 475, 600, { crews })];
  return { ...plan, day: { ...plan.day, breaks, safeStop: { from: "hanging", to: "bleeding" } } };
}
