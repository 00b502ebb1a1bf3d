import { describe, expect, it } from "vitest";
import {
  type Delay,
  LONG,
  NO_DELAY,
  type PairServer,
  pairServer,
  SHORT,
  WORK,
} from "../../../../sim/questions/estimate/pairServer.ts";

const delay: Delay = { short: { chance: 0.3, seconds: 2 }, long: { chance: 0.1, seconds: 40 } };
const work = { seconds: 5, squaredCv: 0.25, stops: [{ chance: 0.02, seconds: 60 }] };

/** Mean seconds of one head by kind of phase; phases that follow have higher numbers. */
function secondsByKind({ kind, rate, start, next }: PairServer): number[] {
  const visits = rate.map(() => 0);
  for (const { phase, chance } of start) visits[phase]! += chance;
  const seconds = [0, 0, 0];
  rate.forEach((each, from) => {
    seconds[kind[from]!]! += visits[from]! / each;
    for (const { phase, chance } of next[from]!) visits[phase]! += visits[from]! * chance;
  });
  return seconds;
}

describe("pairServer", () => {
  it("spends the work, the stops and the waiting that it is given, upstream and downstream alike", () => {
    for (const side of ["upstream", "downstream"] as const) {
      const seconds = secondsByKind(pairServer(work, delay, side, 0.1));
      expect(seconds[WORK]).toBeCloseTo(5, 9);
      expect(seconds[SHORT]).toBeCloseTo(0.6, 9);
      expect(seconds[LONG]).toBeCloseTo(4 + 1.2, 9);
    }
  });

  it("waits before the work upstream and after it downstream", () => {
    const kinds = (side: "upstream" | "downstream") => pairServer(work, delay, side, 0.25).kind;
    expect(kinds("upstream").slice(0, 3)).toEqual([SHORT, LONG, WORK]);
    expect(kinds("downstream").slice(0, 2)).toEqual([WORK, WORK]);
    expect(kinds("downstream").slice(-3)).toEqual([LONG, SHORT, LONG]);
  });

  it("ends only where nothing follows", () => {
    const plain = pairServer({ ...work, stops: [] }, NO_DELAY, "upstream", 0.25);
    expect(plain.ends.at(-1)).toBe(1);
    expect(plain.ends.slice(0, -1).every((chance) => chance === 0)).toBe(true);
    const stopping = pairServer(work, NO_DELAY, "downstream", 0.25);
    expect(stopping.ends.at(-2)).toBeCloseTo(0.98, 12);
    expect(stopping.ends.at(-1)).toBe(1);
  });
});
