import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { constant, crew, manual, planOf, saturated, station, stream } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

const named = (day: ReturnType<typeof runChecked>, name: string) => day.stages.find((stage) => stage.name === name)!;

describe("a diversion", () => {
  it("sends its share to another stage, and each head once: when it comes back it passes", () => {
    // Head at 10: a 10-11, b 11-13, trim 13-16, b again 16-18, last 18-19. The next one 10 s later.
    const line = [
      station("a", 1),
      station("b", 2, { diversions: [{ to: "trim", share: 1 }] }),
      station("last", 1),
      station("trim", 3, { offLine: true, next: "b", buffer: Infinity }),
    ];
    const day = runChecked(planOf(stream(constant(10), 2), line));
    expect(passes(day, "trim", "start")).toEqual([13, 23]);
    expect(passes(day, "b", "start")).toEqual([16, 26]);
    expect(passes(day, "last", "end")).toEqual([19, 29]);
    expect(named(day, "b")).toMatchObject({ processed: 4, diverted: 2 });
  });

  it("at a second stage does not send a head that was sent before", () => {
    const line = [
      station("a", 1, { diversions: [{ to: "trim", share: 1 }] }),
      station("b", 1, { diversions: [{ to: "trim", share: 1 }] }),
      station("trim", 3, { offLine: true, next: "b", buffer: Infinity }),
    ];
    const day = runChecked(planOf(stream(constant(10), 2), line));
    expect(day.stages.map((stage) => stage.diverted)).toEqual([2, 0, 0]);
    expect(day.finishSeconds).toBe(25);
  });

  it("takes its share beside removals, each head going one way", () => {
    const line = [
      station("a", 0.5, {
        removals: [{ as: "condemned", share: 0.1 }],
        diversions: [{ to: "trim", share: 0.2 }],
      }),
      station("last", 0.5, { buffer: Infinity }),
      station("trim", 1, { offLine: true, next: "last", buffer: Infinity }),
    ];
    const day = runChecked(planOf(stream(constant(1), 20_000), line), { check: false });
    // Binomial, 5 standard deviations (false-alarm probability 6e-7 each).
    expect(Math.abs(day.heads.out.condemned! - 2000)).toBeLessThan(5 * Math.sqrt(20_000 * 0.09));
    expect(Math.abs(named(day, "trim").processed - 4000)).toBeLessThan(5 * Math.sqrt(20_000 * 0.16));
    expect(named(day, "a").diverted).toBe(named(day, "trim").processed);
    expect(day.heads.out.carcass! + day.heads.out.condemned!).toBe(20_000);
  });

  it("blocks its position while there is no place at the other stage", () => {
    // Trim takes 10 s and has no place to wait: a 1-2, trim 2-12; head 2: a 2-3, blocked until 12.
    const line = [
      station("a", 1, { buffer: Infinity, diversions: [{ to: "trim", share: 1 }] }),
      station("last", 1),
      station("trim", 10, { offLine: true, next: "last" }),
    ];
    const day = runChecked(planOf(stream(constant(1), 2), line));
    expect(passes(day, "a", "exit")).toEqual([2, 12]);
    expect(passes(day, "trim", "start")).toEqual([2, 12]);
  });
});

describe("a head in hand when its machine breaks", () => {
  it("is taken off unfinished to the stage named for it, and the machine begins afresh after the repair", () => {
    // Cycle 4, breaks after 6 s of work, repair 10 s. Head 1: 0-4. Head 2: 4-6, taken off: trim 6-9, last 9. The machine is
    // down 6-16; head 3: 16-20; head 4 from 20 on.
    const lost = breakdown(6, 10, { headInHand: { to: "trim" } });
    const line = [
      station("a", 4, { breakdowns: [lost] }),
      station("last", 1, { buffer: Infinity }),
      station("trim", 3, { offLine: true, next: "last", buffer: Infinity }),
    ];
    const day = runChecked(planOf(saturated(3), line));
    expect(passes(day, "a", "end").slice(0, 3)).toEqual([4, Number.NaN, 20]);
    expect(passes(day, "a", "exit").slice(0, 3)).toEqual([4, 6, 20]);
    expect(passes(day, "last", "start").slice(0, 3)).toEqual([4, 9, 20]);
    expect(named(day, "a")).toMatchObject({ processed: 2, unfinished: 1, stops: 1 });
  });

  it("sets its person free at once", () => {
    // One person for a and for c, which waits since 4. At 6 a breaks: c 6-8 (head 1).
    const lost = breakdown(6, 100, { headInHand: { to: "trim" } });
    const line = [
      manual("a", 4, "crew", { breakdowns: [lost] }),
      manual("c", 2, "crew", { buffer: Infinity }),
      station("trim", 3, { offLine: true, next: "c", buffer: Infinity }),
    ];
    const rule = "fixed order" as const;
    const day = runChecked(planOf(saturated(2), line, { crews: [crew("crew", 1, { rule })] }));
    // Fixed order: a 0-4, a again 4-6 until it breaks, c 6-8; head 2 comes from trim at 9: c 9-11.
    expect(passes(day, "c", "start").slice(0, 2)).toEqual([6, 9]);
    expect(day.finishSeconds).toBe(11);
  });

  it("of a stop of the whole station is taken off every position that works", () => {
    // Heads at 2 and 4, 10 s of work each: the whole station breaks at 6, with both in work. Trim 6-9, 9-12.
    const lost = breakdown(6, 10, { clock: "calendar", scope: "station", headInHand: { to: "trim" } });
    const line = [
      station("a", 10, { positions: 2, breakdowns: [lost] }),
      station("last", 1, { buffer: Infinity }),
      station("trim", 3, { offLine: true, next: "last", buffer: Infinity }),
    ];
    const day = runChecked(planOf(stream(constant(2), 2), line));
    expect(passes(day, "a", "exit")).toEqual([6, 6]);
    expect(passes(day, "last", "start")).toEqual([9, 12]);
    expect(named(day, "a")).toMatchObject({ processed: 0, unfinished: 2, stops: 1 });
  });
});

describe("a stage off the line", () => {
  it("gets no head that is not sent there, and sends its own on to the next stage of the line", () => {
    const line = [
      station("a", 1, { diversions: [{ to: "trim", share: 0.5 }] }),
      station("trim", 3, { offLine: true, buffer: Infinity }),
      station("b", 1, { buffer: Infinity }),
    ];
    const day = runChecked(planOf(stream(constant(10), 100), line));
    expect(named(day, "trim").processed).toBe(named(day, "a").diverted);
    expect(named(day, "a").diverted).toBeGreaterThan(20);
    expect(named(day, "b").processed).toBe(100);
    expect(day.heads.out.carcass).toBe(100);
  });

  it("at the line's end lets its heads out", () => {
    const line = [
      station("a", 1, { diversions: [{ to: "trim", share: 1 }] }),
      station("b", 1),
      station("trim", 3, { offLine: true }),
    ];
    const day = runChecked(planOf(stream(constant(10), 2), line));
    expect(day.heads.out.carcass).toBe(2);
    expect(day.finishSeconds).toBe(24);
    expect(named(day, "b").processed).toBe(0);
  });
});
