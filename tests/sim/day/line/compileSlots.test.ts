import { describe, expect, it } from "vitest";
import type { Vessel } from "../../../../sim/asked/plan/plan.ts";
import {
  compileLine,
  SLOT_BREAKDOWN,
  SLOT_CALENDAR,
  SLOT_CHAIN,
  SLOT_DWELL,
  SLOT_LOAD,
  SLOT_POSITION,
  SLOT_RETURN,
  SLOT_STREAM,
  SLOT_TRAVEL,
  SLOT_VESSEL,
} from "../../../../sim/day/line/index.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { handling, load } from "../../../support/loads.ts";
import { chain, constant, crateStep, dwell, onChain, planOf, station, stream } from "../../../support/plans.ts";

const tank: Vessel = { name: "tank", capacityKg: 1, emptyAtKg: 1, emptyingSeconds: 1, crew: null, whenFull: "stop" };

describe("compileSlots", () => {
  it("ranks work, dwell and chains last stage first, then travel, breakdowns, vessels, returns, calendar, arrivals", () => {
    const line = [
      station("a", 1, { positions: 2, travelSeconds: constant(1) }),
      chain("c", 4, 1, [onChain("w", 0, 1, 1)]),
      dwell("d", 1, 3),
      station("last", 1, { breakdowns: [breakdown(5, 1, { clock: "calendar" })] }),
    ];
    const { slots } = compileLine(planOf(stream(constant(1), 1), line, { vessels: [tank] }));
    expect(Array.from(slots.kind)).toEqual([
      SLOT_POSITION, // last
      SLOT_DWELL,
      SLOT_POSITION, // w
      SLOT_CHAIN,
      SLOT_POSITION, // a, two positions
      SLOT_POSITION,
      SLOT_TRAVEL,
      SLOT_BREAKDOWN,
      SLOT_VESSEL,
      SLOT_RETURN,
      SLOT_CALENDAR,
      SLOT_STREAM,
    ]);
    expect(slots.count).toBe(12);
  });

  it("gives a chain no slot by position, and a failure of one position on working time the position's slot", () => {
    const line = [station("a", 1, { breakdowns: [breakdown(5, 1)] }), chain("c", 4, 1, []), station("last", 1)];
    const { slots, chains, breakdowns } = compileLine(planOf(stream(constant(1), 1), line));
    expect(Array.from(slots.ofPosition)).toEqual([2, -1, 0]);
    expect(Array.from(chains.slot)).toEqual([1]);
    expect(Array.from(breakdowns.slot)).toEqual([-1]);
  });

  it("keeps the last slot for loads when the supply comes in loads", () => {
    const plan = planOf({ kind: "loads", loads: [load("lorry", 0, 1, 1)] }, [station("a", 1)], {
      liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)]),
    });
    const { slots } = compileLine(plan);
    expect(slots.kind[slots.supply]).toBe(SLOT_LOAD);
    expect(slots.supply).toBe(slots.count - 1);
  });
});
