import { describe, expect, it } from "vitest";
import type { Plan, Station } from "../../../../../sim/asked/plan/index.ts";
import type { DayOptions } from "../../../../../sim/day/engine/index.ts";
import { isSerial } from "../../../../../sim/day/engine/serial/isSerial.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import {
  crew,
  dwell,
  exponential,
  manual,
  pause,
  planOf,
  saturated,
  station,
  stream,
} from "../../../../support/plans.ts";

const OPTIONS: DayOptions = { seed: "s", replication: 0 };
const isPlanSerial = (plan: Plan, options: Partial<DayOptions> = {}) =>
  isSerial(compileLine(plan), { ...OPTIONS, ...options });
const lineWith = (changes: Partial<Station>) =>
  planOf(saturated(9), [station("a", 1), station("b", 1, changes), station("c", 1)]);

describe("isSerial", () => {
  it("holds for single machines in a row, whatever the buffers, the times and the supply's gaps", () => {
    expect(isPlanSerial(lineWith({ buffer: Infinity, cycleSeconds: exponential(2) }))).toBe(true);
    expect(isPlanSerial(planOf(stream(exponential(1), 5), [station("a", 1)]), { antithetic: true })).toBe(true);
    expect(isPlanSerial(lineWith({}), { traces: "none", perHead: false, check: false, warmUpHeads: 0 })).toBe(true);
  });

  it("does not hold when anything but passing on can happen at a machine", () => {
    const weights = { fromKg: 1, toKg: 2, else: "c" };
    const changes: Partial<Station>[] = [
      { positions: 2 },
      { travelSeconds: exponential(1) },
      { weightFactor: { perKg: 0.1, atKg: 2 } },
      { weights },
      { removals: [{ as: "condemned", share: 0.1 }] },
      { diversions: [{ to: "a", share: 0.1 }] },
      { byProducts: [{ name: "blood", share: 0.1, of: "live weight", vessel: null }] },
      { next: "a" },
      { buffer: 2_000_000 },
    ];
    for (const change of changes) expect([change, isPlanSerial(lineWith(change))]).toEqual([change, false]);
  });

  it("does not hold with other kinds of stages, crews, failures, limits, gates, vessels or planned stops", () => {
    const machine = station("a", 1);
    const hand = manual("b", 1, "hands");
    const fails = station("b", 1, { breakdowns: [breakdown(9, 1)] });
    const limit = {
      name: "a to b",
      from: { stage: "a", moment: "end" as const },
      to: { stage: "b", moment: "start" as const },
      minSeconds: null,
      maxSeconds: 5,
      source: "",
    };
    const b = station("b", 1);
    const plain = planOf(saturated(9), [machine, b]);
    const gate = { name: "g", from: "a", to: { stage: "b", moment: "end" as const }, atMost: 1 };
    const plans: Plan[] = [
      planOf(saturated(9), [machine, dwell("b", 1, 3)]),
      planOf(saturated(9), [machine, hand], { crews: [crew("hands", 1)] }),
      planOf(saturated(9), [machine, fails]),
      { ...plain, limits: [limit] },
      { ...plain, gates: [gate] },
      { ...plain, day: { ...plain.day, breaks: [pause("tea", 5, 5, { stages: ["b"] })] } },
      planOf(stream(exponential(1), 5, "turn away"), [machine]),
    ];
    expect(plans.map((plan) => isPlanSerial(plan))).toEqual(plans.map(() => false));
  });

  it("does not hold when heads come back to a section", () => {
    const sections = (...names: string[]) =>
      planOf(
        saturated(9),
        names.map((section, at) => station(`s${at}`, 1, { section })),
      );
    expect(isPlanSerial(sections("a", "a", "b", "b"))).toBe(true);
    expect(isPlanSerial(sections("a", "b", "a"))).toBe(false);
  });

  it("does not hold when something watches the day", () => {
    const watched: Partial<DayOptions>[] = [
      { traces: "binned" },
      { traces: "exact" },
      { perHead: true },
      { check: true },
      { warmUpHeads: 5 },
    ];
    expect(watched.map((options) => isPlanSerial(lineWith({}), options))).toEqual(watched.map(() => false));
  });
});
