import { describe, expect, it } from "vitest";
import { measure, responsesOf } from "../../../sim/observations/index.ts";
import type { Plan } from "../../../sim/plan/plan.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../support/handMadeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

describe("measure", () => {
  it("has exactly the keys of responsesOf, in the same order", () => {
    expect(Object.keys(values)).toEqual(responsesOf(HAND_MADE_PLAN).map(({ key }) => key));
  });

  it("counts throughput from the first shift's start to the last head out", () => {
    expect(values.headsPerHour).toBe(480);
  });

  it("reads the day's output and end", () => {
    expect(values).toMatchObject({ carcasses: 960, finish: 9000, overtime: 1800, unfinished: 0 });
  });

  it("has no throughput for a day that ended before its first shift", () => {
    expect(measure({ ...handMadeDay(), finishSeconds: 1800 }, HAND_MADE_PLAN).headsPerHour).toBeNull();
  });

  it("has no overtime, rather than a negative one, when the day ends early", () => {
    expect(measure({ ...handMadeDay(), finishSeconds: 7000 }, HAND_MADE_PLAN).overtime).toBe(0);
  });

  it.each(["ceiling", "stuck"] as const)("marks a day that ended as %s", (status) => {
    expect(measure({ ...handMadeDay(), status }, HAND_MADE_PLAN).unfinished).toBe(1);
  });

  it("gives every way out of the line its own count, 0 when nothing went there", () => {
    expect(values).toMatchObject({ "removed.condemned": 30, "removed.dead on arrival": 10, leftInLairage: 0 });
    const nothingRemoved = { ...handMadeDay(), heads: { ...handMadeDay().heads, out: { carcass: 1 } } };
    expect(measure(nothingRemoved, HAND_MADE_PLAN)["removed.condemned"]).toBe(0);
  });

  it("gives state shares of position time that add up to one", () => {
    expect(values).toMatchObject({
      "working.skinning": 0.5,
      "blocked.skinning": 0.1,
      "starved.skinning": 0.2,
      "noCrew.skinning": 0.05,
      "down.skinning": 0.1,
      "onBreak.skinning": 0.05,
      "working.chilling": 0.75,
      "working.unloading": 0.5,
      "stops.skinning": 3,
    });
  });

  it("reads queues of heads, of crates and heads present in a dwell stage", () => {
    expect(values).toMatchObject({
      "queue.skinning.mean": 2.5,
      "queue.skinning.max": 5,
      "queue.crate feeding.max": 40,
      "queue.chilling.mean": 61,
    });
  });

  it("reads work in process by section, lairage and lorries", () => {
    expect(values).toMatchObject({
      "wip.dressing.mean": 4.25,
      "wip.chilling.max": 90,
      "lairage.mean": 14.5,
      "lairage.max": 40,
      "lorry.unloading.max": 1800,
      "lorry.emptied.max": 7300,
    });
  });

  it("has no time to empty a lorry when some of its heads stayed in lairage", () => {
    const day = handMadeDay();
    const left = { ...day, loads: [...day.loads, { ...day.loads[0]!, emptiedSeconds: null }] };
    expect(measure(left, HAND_MADE_PLAN)["lorry.emptied.max"]).toBeNull();
  });

  it("reads share beyond, tail and worst of a maximum", () => {
    expect(values["beyond.stick to evisceration"]).toBe(5 / 200);
    expect(values["p95.stick to evisceration"]).toBeCloseTo(12 + 0.95 * 63, 12);
    expect(values["worst.stick to evisceration"]).toBe(75);
  });

  it("has no value, not a zero, for a limit that no head passed", () => {
    expect(values).toMatchObject({
      "beyond.chilling time": null,
      "p05.chilling time": null,
      "worst.chilling time": null,
    });
  });

  it("takes the shortest time as the worst of a minimum, and both ends where both are limited", () => {
    const both: Plan = {
      ...HAND_MADE_PLAN,
      limits: [
        { ...HAND_MADE_PLAN.limits[0]!, minSeconds: 20, maxSeconds: null },
        { ...HAND_MADE_PLAN.limits[1]!, minSeconds: 1, maxSeconds: 9 },
      ],
    };
    expect(measure(handMadeDay(), both)["worst.stick to evisceration"]).toBe(12);
    const keys = responsesOf(both).map(({ key }) => key);
    expect(keys).toContain("shortest.chilling time");
    expect(keys).toContain("worst.chilling time");
    expect(keys).not.toContain("shortest.stick to evisceration");
  });

  it("reads occupation and yield of the crew", () => {
    expect(values).toMatchObject({ "crew.dressing.occupation": 0.75, carcassesPerPersonHour: 120 });
  });

  it("has no time in system when no carcass left", () => {
    const day = handMadeDay();
    const none = { ...day, timeInSystem: { ...day.timeInSystem, count: 0 } };
    expect(measure(none, HAND_MADE_PLAN)["timeInSystem.mean"]).toBeNull();
  });
});
