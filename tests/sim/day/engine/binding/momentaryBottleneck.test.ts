import { describe, expect, it } from "vitest";
import { ActivePeriods } from "../../../../../sim/day/engine/binding/activePeriods.ts";
import { momentaryBottleneck } from "../../../../../sim/day/engine/binding/momentaryBottleneck.ts";

const [A, B, C] = [0, 1, 2];

/** Turns in order of time: [time, position, active]. */
function spansOf(turns: [number, number, boolean][], end: number): [number, number, string][] {
  const periods = new ActivePeriods([true, true, true]);
  for (const [time, position, active] of turns) periods.turn(position, active, time);
  const spans: [number, number, string][] = [];
  momentaryBottleneck(periods.close(end), (from, to, positions) => {
    spans.push([from, to, positions.map((position) => "ABC"[position]).join("")]);
  });
  return spans;
}

describe("the momentary bottleneck by longest active period (Roser, Nakano and Tanaka 2002)", () => {
  it("is A alone, then shifts, then is B alone; C, always within, never (worked by hand)", () => {
    const turns: [number, number, boolean][] = [
      [0, A, true],
      [2, C, true],
      [5, C, false],
      [6, B, true],
      [7, C, true],
      [9, C, false],
      [10, A, false],
      [14, A, true],
      [18, A, false],
      [20, B, false],
    ];
    const spans = spansOf(turns, 20);
    expect(spans).toEqual([
      [0, 6, "A"],
      [6, 10, "AB"],
      [10, 20, "B"],
    ]);
  });

  it("takes work that goes on at the instant at which it ended for one period", () => {
    const turns: [number, number, boolean][] = [
      [0, A, true],
      [1, B, true],
      [3, A, false],
      [3, A, true],
      [5, B, false],
      [8, A, false],
    ];
    expect(spansOf(turns, 8)).toEqual([[0, 8, "A"]]);
  });

  it("is nobody while nobody is active, and whoever is under way at the end until then", () => {
    const turns: [number, number, boolean][] = [
      [1, A, true],
      [2, A, false],
      [4, B, true],
    ];
    expect(spansOf(turns, 6)).toEqual([
      [1, 2, "A"],
      [4, 6, "B"],
    ]);
  });

  it("ends when everything ends at the same instant", () => {
    const turns: [number, number, boolean][] = [
      [0, A, true],
      [1, B, true],
      [4, B, false],
      [4, A, false],
    ];
    expect(spansOf(turns, 9)).toEqual([[0, 4, "A"]]);
  });

  it("forgets what was before the warm-up ended", () => {
    const periods = new ActivePeriods([true, true]);
    periods.turn(A, true, 0);
    periods.turn(B, true, 3);
    periods.forget(5);
    periods.turn(A, false, 6);
    expect(periods.close(9)).toEqual({ position: [A, B], from: [5, 5], to: [6, 9] });
  });

  it("listens to machines only, not to ways out", () => {
    const periods = new ActivePeriods([false, true]);
    periods.machineTurns(A, true, 0);
    periods.machineTurns(B, true, 1);
    expect(periods.close(2)).toEqual({ position: [B], from: [1], to: [2] });
  });
});
