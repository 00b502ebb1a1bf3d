import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ByProduct, Supply } from "../../../../sim/asked/plan/plan.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { buildChillingCurve, chillingOf } from "../../../../sim/maths/chilling/index.ts";
import { CHILLING } from "../../../support/chillingConditions.ts";
import { handling, load } from "../../../support/loads.ts";
import { chain, constant, crateStep, dwell, onChain, planOf, station, stream } from "../../../support/plans.ts";
import { randomPlan } from "../../../support/randomPlans.ts";
import { relativeError } from "../../../support/relativeError.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

const off = (name: string, share: number, of: ByProduct["of"]): ByProduct => ({ name, share, of, vessel: null });

describe("what is taken off a head", () => {
  it("is a share of live weight or of what is left, in the order of the list and of the line", () => {
    // 2.5 kg. a: 4 % of live weight, 0.1 kg, then a tenth of the 2.4 kg left, 0.24 kg. b: half of live weight, 1.25 kg. c:
    // 2 % of the 0.91 kg left, 0.0182 kg. Carcass 0.8918 kg. Ten heads.
    const line = [
      station("a", 1, { byProducts: [off("blood", 0.04, "live weight"), off("skin", 0.1, "what is left")] }),
      station("b", 1, { byProducts: [off("offal", 0.5, "live weight")] }),
      dwell("c", 1, 5, { byProducts: [off("drip", 0.02, "what is left")] }),
    ];
    const { masses } = runChecked(planOf(stream(constant(2), 10), line));
    expect(masses.liveKg).toBeCloseTo(25, 9);
    expect(masses.carcassLiveKg).toBeCloseTo(25, 9);
    expect(masses.byProductsKg.blood).toBeCloseTo(1, 9);
    expect(masses.byProductsKg.skin).toBeCloseTo(2.4, 9);
    expect(masses.byProductsKg.offal).toBeCloseTo(12.5, 9);
    expect(masses.byProductsKg.drip).toBeCloseTo(0.182, 9);
    expect(masses.outKg.carcass).toBeCloseTo(8.918, 9);
    expect(masses.onLineKg).toBe(0);
  });

  it("is never more than is left of it", () => {
    const line = [
      station("a", 1, { byProducts: [off("most", 0.9, "live weight")] }),
      station("b", 1, { byProducts: [off("rest", 0.2, "live weight")] }),
    ];
    const { masses } = runChecked(planOf(stream(constant(2), 2), line));
    expect(masses.byProductsKg.rest).toBeCloseTo(2 * 0.25, 12);
    expect(masses.outKg.carcass).toBeCloseTo(0, 12);
  });

  it("by a station on a chain and by the chain's end alike", () => {
    const line = [
      station("a", 1),
      chain("c", 3, 2, [onChain("w", 0, 2, 1, { byProducts: [off("blood", 0.2, "live weight")] })], {
        byProducts: [off("drip", 0.5, "what is left")],
      }),
      station("last", 1),
    ];
    const { masses } = runChecked(planOf(stream(constant(2), 4), line));
    // 0.5 kg of blood, then half of the 2 kg left.
    expect(masses.byProductsKg).toEqual({ drip: 4, blood: 2 });
    expect(masses.outKg.carcass).toBe(4);
  });

  it("is left on a head that passes the station unfinished", () => {
    const w = onChain("w", 0, 1, 50, { ifUnfinished: "pass", byProducts: [off("skin", 0.2, "live weight")] });
    const line = [
      station("a", 1),
      chain("c", 3, 2, [w], { unfinishedTo: "trim" }),
      station("last", 1, { buffer: 9 }),
      station("trim", 1, { offLine: true, next: "last", buffer: 9 }),
    ];
    const { masses } = runChecked(planOf(stream(constant(2), 3), line));
    expect(masses.byProductsKg.skin).toBe(0);
    expect(masses.outKg.carcass).toBe(7.5);
  });

  it("is gone before a head is condemned: only the rest is condemned with it", () => {
    const line = [
      station("a", 1, {
        byProducts: [off("blood", 0.2, "live weight")],
        removals: [{ as: "condemned", share: 1 }],
      }),
    ];
    const { masses, heads } = runChecked(planOf(stream(constant(2), 4), line));
    expect(heads.out).toEqual({ carcass: 0, condemned: 4 });
    expect(masses.outKg).toEqual({ carcass: 0, condemned: 8 });
    expect(masses.carcassLiveKg).toBe(0);
  });

  it("adds up over random plans: live weight = by-products + out + on the line, to 1e-9", () => {
    fc.assert(
      fc.property(randomPlan, fc.nat(), (plan, replication) => {
        const { masses } = runDay(compileLine(plan), { seed: "mass", replication });
        const sum = (kilograms: Record<string, number>) => Object.values(kilograms).reduce((a, b) => a + b, 0);
        const found = sum(masses.byProductsKg) + sum(masses.outKg) + masses.onLineKg;
        expect(relativeError(found, masses.liveKg + (masses.fromBeforeKg ?? 0))).toBeLessThan(1e-9);
      }),
      { seed: 2027, numRuns: 200 },
    );
  });
});

describe("a machine that takes only some weights", () => {
  const twoLoads: Supply = {
    kind: "loads",
    loads: [
      load("light", 0, 1, 2, { liveWeightKg: constant(2) }),
      load("heavy", 0, 1, 2, { liveWeightKg: constant(3) }),
    ],
  };
  const liveHandling = handling([crateStep("unloading", 1), crateStep("feeding", 1)]);
  const line = (fromKg: number, toKg: number) => [
    station("hanging", 1),
    station("machine", 4, { buffer: 9, weights: { fromKg, toKg, else: "trim" } }),
    station("last", 1, { buffer: 9 }),
    station("trim", 3, { offLine: true, next: "last", buffer: 9 }),
  ];

  it("lets the others pass unworked, in no time, to the stage named for them", () => {
    // Hung at 2, 3 (2 kg), 4, 5 (3 kg): at the machine at 3, 4, 5, 6. Light ones go on at 3 and 4 to trim: 3-6, 6-9. Heavy
    // ones: 5-9, 9-13. Last: 6, 9 (from trim, further down), 10, 13.
    const day = runChecked(planOf(twoLoads, line(2.5, 3.5), { liveHandling }));
    expect(passes(day, "machine", "start")).toEqual([3, 4, 5, 9]);
    expect(passes(day, "machine", "end")).toEqual([3, 4, 9, 13]);
    expect(passes(day, "trim", "end")).toEqual([6, 9, Number.NaN, Number.NaN]);
    expect(passes(day, "last", "start")).toEqual([6, 9, 10, 13]);
    expect(day.stages.find((stage) => stage.name === "machine")).toMatchObject({ processed: 2, unworked: 2 });
  });

  it("takes its limits with it", () => {
    const day = runChecked(planOf(twoLoads, line(2, 3), { liveHandling }));
    expect(day.stages.find((stage) => stage.name === "machine")).toMatchObject({ processed: 4, unworked: 0 });
  });

  it("leaves on the others what it would have taken off", () => {
    const [hanging, machine, ...rest] = line(2.5, 3.5);
    const skinned = { ...machine!, byProducts: [off("skin", 0.1, "live weight")] };
    const { masses } = runChecked(planOf(twoLoads, [hanging!, skinned, ...rest], { liveHandling }));
    expect(masses.byProductsKg.skin).toBeCloseTo(0.6, 12);
  });
});

describe("a cycle that depends on the weight", () => {
  const endOf = (liveKg: number, perKg: number) => {
    const supply: Supply = {
      kind: "stream",
      interarrival: constant(10),
      heads: 1,
      whenFull: "wait",
      liveWeightKg: constant(liveKg),
    };
    return (
      passes(runChecked(planOf(supply, [station("a", 5, { weightFactor: { perKg, atKg: 2.5 } })])), "a", "end")[0]! - 10
    );
  };

  it("is longer for a heavier head and shorter for a lighter one", () => {
    expect(endOf(3, 0.4)).toBeCloseTo(6, 12);
    expect(endOf(2.5, 0.4)).toBe(5);
    expect(endOf(2, 0.4)).toBeCloseTo(4, 12);
  });

  it("is never below a tenth", () => {
    // 1 + 10 x (2 - 2.5) is less than nothing.
    expect(endOf(2, 10)).toBe(0.5);
  });

  it("works on a chain too", () => {
    // 5 s x 1.2 = 6 s in a window of 8 s: hung at 11 (steps at 2, 4, ...), in the window from 12.
    const supply: Supply = {
      kind: "stream",
      interarrival: constant(10),
      heads: 1,
      whenFull: "wait",
      liveWeightKg: constant(3),
    };
    const w = onChain("w", 1, 4, 5, { weightFactor: { perKg: 0.4, atKg: 2.5 } });
    const day = runChecked(planOf(supply, [station("hang", 1), chain("c", 6, 2, [w]), station("last", 1)]));
    expect(passes(day, "w", "end")[0]).toBeCloseTo(18, 9);
  });
});

describe("a computed chilling", () => {
  const chilled = (liveKg: number, heads = 1) => {
    const supply: Supply = {
      kind: "stream",
      interarrival: constant(60),
      heads,
      whenFull: "wait",
      liveWeightKg: constant(liveKg),
    };
    const chiller = { ...dwell("chiller", 1, 100), dwell: { kind: "chilling" as const, chilling: CHILLING } };
    const day = runChecked(planOf(supply, [station("a", 1), chiller]));
    return {
      seconds: passes(day, "chiller", "end")[0]! - passes(day, "chiller", "start")[0]!,
      joules: day.stages.at(-1)!.heatJoules,
    };
  };

  it("holds a carcass as long as the heat equation asks for its weight, and books the heat", () => {
    const exact = chillingOf(CHILLING, 2.5 * 0.55);
    const { seconds, joules } = chilled(2.5);
    expect(exact.seconds).toBeGreaterThan(600);
    // The curve is rounded to 1 ms and 1 mJ; 2.5 kg is one of its rows.
    expect(Math.abs(seconds - exact.seconds)).toBeLessThan(0.001);
    expect(Math.abs(joules - exact.joules)).toBeLessThan(0.001);
  });

  it("between the curve's rows is within its stated 0.03 % of the exact solution", () => {
    for (const liveKg of [0.97, 1.83, 2.524, 3.312, 6.66]) {
      const exact = chillingOf(CHILLING, liveKg * 0.55);
      const found = chilled(liveKg);
      expect(relativeError(found.seconds, exact.seconds), `${liveKg} kg`).toBeLessThan(3e-4);
      expect(relativeError(found.joules, exact.joules), `${liveKg} kg`).toBeLessThan(3e-4);
    }
  });

  it("takes longer for a heavier carcass, and three carcasses give three times the heat", () => {
    expect(chilled(3).seconds).toBeGreaterThan(chilled(2).seconds);
    expect(chilled(2.5, 3).joules).toBeCloseTo(3 * chilled(2.5).joules, 3);
  });

  it("has the ends of its curve for weights beyond it", () => {
    const { weightsKg, seconds } = buildChillingCurve(CHILLING);
    expect(chilled(0.2).seconds).toBeCloseTo(seconds[0]!, 6);
    expect(chilled(12).seconds).toBeCloseTo(seconds.at(-1)!, 6);
    expect(weightsKg[0]).toBe(0.5);
  });
});
