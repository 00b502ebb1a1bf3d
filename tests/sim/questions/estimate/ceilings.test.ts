import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { ceilings } from "../../../../sim/questions/estimate/index.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { chain, crateStep, crew, dwell, manual, onChain, planOf, saturated, station } from "../../../support/plans.ts";

const find = (plan: Plan, what: string, kind: string) =>
  ceilings(plan).find((each) => each.what === what && each.kind === kind)?.headsPerSecond;

describe("ceilings", () => {
  it("come the lowest first", () => {
    const found = ceilings(planOf(saturated(9), [station("a", 2), station("b", 5), station("c", 3)]));
    expect(found[0]).toMatchObject({ what: "b", kind: "positions", headsPerSecond: 0.2 });
    expect(found.map(({ headsPerSecond }) => headsPerSecond)).toEqual(
      found.map((each) => each.headsPerSecond).toSorted((a, b) => a - b),
    );
  });

  it("count repairs and visits against a station", () => {
    const line = [
      station("a", 4, { positions: 2, breakdowns: [breakdown(90, 10)], removals: [{ as: "x", share: 0.5 }] }),
      station("b", 4),
    ];
    const plan = planOf(saturated(9), line);
    expect(find(plan, "a", "positions")).toBeCloseTo(0.5 / (1 + 10 / 90), 12);
    expect(find(plan, "b", "positions")).toBeCloseTo(0.5, 12);
  });

  it("let a dwell pass its places by its stay, travel to it included, and a chain a shackle a step", () => {
    const line = [
      station("a", 1, { travelSeconds: { family: "constant", value: 10 } }),
      dwell("bleeding", 90, 20),
      chain("rail", 10, 4, []),
    ];
    const plan = planOf(saturated(9), line);
    expect(find(plan, "bleeding", "places")).toBeCloseTo(0.2, 12);
    expect(find(plan, "rail", "chain")).toBeCloseTo(0.25, 12);
  });

  it("hold a dwell up where stays differ and heads leave in order", () => {
    const line = [station("a", 1), dwell("chilling", { family: "normal", mean: 100, sd: 10 }, 50)];
    const found = find(planOf(saturated(9), line), "chilling", "places")!;
    expect(found).toBeLessThan(50 / 105);
    expect(found).toBeGreaterThan(50 / 130);
  });

  it("take crews that share work together, and what only one of them may do by itself", () => {
    const line = [
      manual("a", 6, "one"),
      manual("b", 4, "two", { crews: ["one", "two"], peoplePerPosition: 2 }),
      station("c", 3, { crews: ["three"], peoplePerPosition: 1, work: "manual" }),
    ];
    const plan = planOf(saturated(9), line, {
      crews: [crew("one", 1), crew("two", 2), crew("three", 2, { absentShare: 0.5 })],
    });
    expect(find(plan, "one, two", "people")).toBeCloseTo(3 / 14, 12);
    expect(find(plan, "one", "people")).toBeCloseTo(1 / 6, 12);
    expect(find(plan, "three", "people")).toBeCloseTo(1 / 3, 12);
  });

  it("look at crate steps by the heads in a crate, and at stations on chains", () => {
    const loads = [
      {
        name: "l",
        atSeconds: 0,
        delay: null,
        comesShare: 1,
        crates: 10,
        headsPerCrate: 12,
        deadOnArrivalShare: 0,
        liveWeightKg: { family: "constant" as const, value: 2.5 },
      },
    ];
    const line = [station("hanging", 1), chain("rail", 12, 2, [onChain("cutting", 2, 4, 3, { positions: 2 })])];
    const plan = planOf({ kind: "loads", loads }, line, {
      liveHandling: {
        way: "lift",
        toHanging: [crateStep("unloading", 60, { cratesPerCycle: 2 }), crateStep("feeding", 24)],
        back: [],
        cratesAtHanging: 2,
        fleet: null,
      },
    });
    expect(find(plan, "unloading", "crates")).toBeCloseTo(0.4, 12);
    expect(find(plan, "feeding", "crates")).toBeCloseTo(0.5, 12);
    expect(find(plan, "cutting", "positions")).toBeCloseTo(2 / 3, 12);
  });

  it("let so many heads through a gate as fit into the least time between its ends", () => {
    const line = [station("stunning", 4), station("sticking", 5), station("end", 1)];
    const gate = { name: "gate", from: "stunning", to: { stage: "sticking", moment: "end" as const }, atMost: 2 };
    expect(find(planOf(saturated(9), line, { gates: [gate] }), "gate", "gate")).toBeCloseTo(2 / 9, 12);
  });
});
