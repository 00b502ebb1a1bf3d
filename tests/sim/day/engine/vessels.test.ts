import { describe, expect, it } from "vitest";
import type { Vessel } from "../../../../sim/asked/plan/plan.ts";
import { constant, crew, manual, planOf, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

// Heads weigh 2.5 kg; 40 % of that, 1 kg, runs into the tank at the end of the work.

const byProducts = [{ name: "blood", share: 0.4, of: "live weight" as const, vessel: "tank" }];

function tank(capacityKg: number, emptyAtKg: number, emptyingSeconds: number, changes: Partial<Vessel> = {}): Vessel {
  return { name: "tank", capacityKg, emptyAtKg, emptyingSeconds, crew: null, whenFull: "stop", ...changes };
}

describe("a vessel", () => {
  it("is emptied at its mark, and what runs in meanwhile stays", () => {
    // One kilogram at 11, 21, ... 61. Two at 21: emptying 21-36 takes those two away; the one of 31 stays, so that the mark
    // is reached again at 41 (were it lost, at 51) and that emptying is over at 56, before the day is.
    const line = [station("a", 1, { byProducts })];
    const day = runChecked(planOf(stream(constant(10), 6), line, { vessels: [tank(4, 2, 15)] }));
    expect(day.vessels[0]).toEqual({ name: "tank", emptied: 2, maxKg: 3, spilledKg: 0, fullSeconds: 0 });
  });

  it("that is full stops the stage that feeds it until it is empty", () => {
    // Ends at 3, 5, 7: full with three. Emptying 7-27; heads 4 to 6 wait and follow at 27, 28, 29.
    const line = [station("a", 1, { buffer: Infinity, byProducts })];
    const day = runChecked(planOf(stream(constant(2), 6), line, { vessels: [tank(3, 3, 20)] }));
    expect(passes(day, "a", "start")).toEqual([2, 4, 6, 27, 28, 29]);
    expect(day.vessels[0]).toMatchObject({ emptied: 1, maxKg: 3, spilledKg: 0, fullSeconds: 20 });
    // Head 4 comes at 8: held for 19 s, in which the stage counts as blocked.
    expect(day.stages[0]!.heldSeconds).toBe(19);
    expect(secondsIn(day, "a").blocked).toBe(19);
  });

  it("that is full and may spill stops nobody; what is spilled is counted", () => {
    // Full at 7; emptying would last until 27. Three more kilograms at 9, 11, 13 run over.
    const line = [station("a", 1, { buffer: Infinity, byProducts })];
    const vessels = [tank(3, 3, 20, { whenFull: "spill" })];
    const day = runChecked(planOf(stream(constant(2), 6), line, { vessels }));
    expect(passes(day, "a", "start")).toEqual([2, 4, 6, 8, 10, 12]);
    expect(day.vessels[0]).toEqual({ name: "tank", emptied: 0, maxKg: 3, spilledKg: 3, fullSeconds: 6 });
    expect(day.masses.byProductsKg.blood).toBeCloseTo(6, 12);
  });

  it("waits for somebody of its crew, who does it before other work", () => {
    // The only person works at b 3-8 when the tank is full at 7: emptying 8-28, then b again. a follows at 28.
    const line = [station("a", 1, { buffer: Infinity, byProducts }), manual("b", 5, "crew", { buffer: Infinity })];
    const vessels = [tank(3, 3, 20, { crew: "crew" })];
    const day = runChecked(planOf(stream(constant(2), 4), line, { vessels, crews: [crew("crew", 1)] }));
    expect(passes(day, "a", "start")).toEqual([2, 4, 6, 28]);
    expect(passes(day, "b", "start")).toEqual([3, 28, 33, 38]);
    expect(day.crews[0]!.busySeconds).toBe(4 * 5 + 20);
    expect(day.vessels[0]!.fullSeconds).toBe(21);
  });

  it("fed by two stages stops both when it is full, and lets both go on", () => {
    // a ends at 3 and 5, b at 4: full at 5, emptying to 25. b holds head 2 (there since 5), a head 3 (there since 6). Both
    // go on at 25 and 26: 26 b and a, 27 b: full again with three, a's fourth kilogram at the same second (in hand). The
    // three are gone at 47, when b takes head 4.
    const line = [station("a", 1, { buffer: Infinity, byProducts }), station("b", 1, { buffer: Infinity, byProducts })];
    const day = runChecked(planOf(stream(constant(2), 4), line, { vessels: [tank(3, 3, 20)] }));
    expect(passes(day, "a", "start")).toEqual([2, 4, 25, 26]);
    expect(passes(day, "b", "start")).toEqual([3, 25, 26, 47]);
    expect(day.vessels[0]).toEqual({ name: "tank", emptied: 2, maxKg: 4, spilledKg: 0, fullSeconds: 40 });
  });

  it("does not stop a stage that feeds another one", () => {
    const apart = [{ ...byProducts[0]!, vessel: "other" }];
    const line = [station("a", 1, { buffer: Infinity, byProducts }), station("b", 1, { byProducts: apart })];
    const vessels = [tank(100, 100, 5), tank(1, 1, 1000, { name: "other" })];
    const day = runChecked(planOf(stream(constant(2), 3), line, { vessels }));
    // The other one is full from 4 to 1004: b holds head 2, a goes on until b's place is taken.
    expect(passes(day, "a", "start")).toEqual([2, 4, 6]);
    expect(passes(day, "b", "start").slice(0, 2)).toEqual([3, 1004]);
  });

  it("that takes nothing leaves the line alone: the by-product goes away at once", () => {
    const away = [{ name: "blood", share: 0.4, of: "live weight" as const, vessel: null }];
    const day = runChecked(planOf(stream(constant(2), 6), [station("a", 1, { byProducts: away })]));
    expect(passes(day, "a", "start")).toEqual([2, 4, 6, 8, 10, 12]);
    expect(day.masses.byProductsKg.blood).toBeCloseTo(6, 12);
  });
});
