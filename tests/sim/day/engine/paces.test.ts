import { describe, expect, it } from "vitest";
import type { Pace, Plan } from "../../../../sim/asked/plan/plan.ts";
import { chain, constant, onChain, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

const pace = (fromSeconds: number, speed: number, mostPerSecond: number | null = null): Pace => ({
  fromSeconds,
  speed,
  mostPerSecond,
});
const until = (plan: Plan, ceilingSeconds: number): Plan => ({ ...plan, day: { ...plan.day, ceilingSeconds } });

describe("a station's speed by the hour", () => {
  it("holds for heads begun in the hour; a head in work keeps the time with which it began", () => {
    // 4 s as written, 8 s at half speed from 10 on, at least 5 s from 30 on: 8-12 and 28-36 keep what they began with.
    const line = [station("a", 4, { pace: [pace(10, 0.5), pace(30, 1, 0.2)] })];
    expect(passes(runChecked(planOf(saturated(8), line)), "a", "end").slice(0, 8)).toEqual([
      4, 8, 12, 20, 28, 36, 41, 46,
    ]);
  });

  it("changes at the very second of its hour, and one before the day's start holds from the start", () => {
    const line = [station("a", 4, { pace: [pace(-100, 0.5), pace(8, 2)] })];
    expect(passes(runChecked(planOf(saturated(3), line)), "a", "end").slice(0, 3)).toEqual([8, 10, 12]);
  });

  it("has an upper rate of the whole station: each of its positions takes at least its part of it", () => {
    // 0.2 heads a second with two positions: 10 s at each of them, however short the cycle.
    const line = [station("a", 4, { positions: 2, pace: [pace(0, 1, 0.2)] })];
    expect(passes(runChecked(planOf(saturated(4), line)), "a", "end").slice(0, 4)).toEqual([10, 10, 20, 20]);
  });

  it("multiplies the time that the head's weight takes, and leaves alone heads that pass unworked", () => {
    const heavy = { weightFactor: { perKg: 1, atKg: 1.5 }, pace: [pace(0, 0.5, 0.1)] };
    const day = runChecked(planOf(saturated(1), [station("a", 6, heavy)]));
    // 6 s x (1 + 1 x 1 kg) / 0.5 = 24 s, more than the 10 s of the upper rate.
    expect(passes(day, "a", "end")[0]).toBe(24);
    const light = { weights: { fromKg: 3, toKg: 4, else: "trim" }, pace: [pace(0, 0.5)] };
    const trim = station("trim", 1, { offLine: true, buffer: Infinity });
    const unworked = runChecked(planOf(stream(constant(5), 1), [station("a", 6, light), station("b", 1), trim]));
    expect(passes(unworked, "a", "end")).toEqual([5]);
  });

  it("gives as many heads as the hours' rates times the hours, counted by hand", () => {
    // 900 /h for an hour, half of that, then at most 720 /h: 900 + 450 + 720.
    const line = [station("a", 4, { pace: [pace(3600, 0.5), pace(7200, 1, 0.2)] })];
    const day = runChecked(until(planOf(saturated(1e6), line), 3 * 3600), { check: false, perHead: false });
    expect(day.heads.out.carcass).toBe(2070);
  });

  it("draws the same times as without it, so that the other heads keep theirs", () => {
    const cycle = { family: "lognormal" as const, mean: 4, cv: 0.5 };
    const ends = (paces: Pace[]) =>
      passes(runChecked(planOf(saturated(20), [station("a", cycle, { pace: paces })])), "a", "end");
    const plain = ends([]).slice(0, 20);
    expect(ends([pace(0, 0.5)]).slice(0, 20)).toEqual(plain.map((end) => expect.closeTo(2 * end, 9)));
    expect(ends([pace(1e6, 0.5)]).slice(0, 20)).toEqual(plain);
  });
});

describe("a chain's speed by the hour", () => {
  const rail = (paces: Pace[], changes: Partial<Plan> = {}) =>
    planOf(stream(constant(1), 1), [station("hang", 0.5), chain("rail", 4, 2, [], { pace: paces })], changes);

  it("changes at the hour, with the step that it is making", () => {
    // Steps at 2 and 4; half of the next one is left at 5 and takes 2 s: 7; then 4 s a step: unloaded at 11.
    expect(passes(runChecked(rail([pace(5, 0.5)])), "rail", "exit")).toEqual([11]);
    // As written: steps at 2, 4, 6, unloaded at 8. Faster from 6 on: the whole next step takes 1 s.
    expect(passes(runChecked(rail([])), "rail", "exit")).toEqual([8]);
    expect(passes(runChecked(rail([pace(6, 2)])), "rail", "exit")).toEqual([7]);
  });

  it("has an upper rate of shackles, and one before the day's start holds from the first step", () => {
    // 0.25 shackles a second: steps at 4, 8, 12, unloaded at 16.
    expect(passes(runChecked(rail([pace(-5, 3, 0.25)])), "rail", "exit")).toEqual([16]);
  });

  it("changes while it stands as well", () => {
    // Stands 4.5-6.5 with 1.5 s of a step left, 3 s of it at half speed: step at 9.5; stands 11-13 with 2.5 s left: 15.5.
    const board = shared(["rail"], 4.5, 2, { clock: "calendar" });
    expect(passes(runChecked(rail([pace(5, 0.5)], { sharedBreakdowns: [board] })), "rail", "exit")).toEqual([15.5]);
  });

  it("leaves its stations their own", () => {
    const wash = onChain("wash", 0, 3, 1, { pace: [pace(0, 0.25)] });
    const line = [station("hang", 0.5), chain("rail", 4, 2, [wash], { pace: [pace(0, 0.5)] })];
    // Hung at 1.5, washed until 5.5; steps at 4, 8, 12, unloaded at 16.
    const day = runChecked(planOf(stream(constant(1), 1), line));
    expect(passes(day, "wash", "end")).toEqual([5.5]);
    expect(passes(day, "rail", "exit")).toEqual([16]);
  });
});

it("owes the time at every pace to the work, exactly", () => {
  const line = [station("a", 4, { pace: [pace(10, 0.5)] }), chain("rail", 4, 2, [], { pace: [pace(17, 0.5)] })];
  const day = runChecked(planOf(stream(constant(9), 1), line), { binding: true });
  // Work 9-13, hung at 13; the rail steps at 14 and 16, half of the next one is left at 17: 19, 23.
  expect(day.finishSeconds).toBe(23);
  expect(day.binding!.day.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(23, 9);
});
