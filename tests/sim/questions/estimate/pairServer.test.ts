import { describe, expect, it } from "vitest";
import {
  type Delay,
  LONG,
  NO_DELAY,
  type PairServer,
  type PhaseTime,
  pairServer,
  phaseTime,
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

/** Mean and squared coefficient of variation of phases in a row, from the last phase up. */
function moments({ start, rate, onward }: PhaseTime) {
  let [mean, square] = [0, 0];
  const [first, second]: number[][] = [[], []];
  for (let phase = rate.length - 1; phase >= 0; phase--) {
    const own = 1 / rate[phase]!;
    const goesOn = onward[phase]!;
    square = 2 * own * own + goesOn * (2 * own * mean + square);
    mean = own + goesOn * mean;
    first![phase] = mean;
    second![phase] = square;
  }
  const all = start.reduce((sum, chance, phase) => sum + chance * first![phase]!, 0);
  const squares = start.reduce((sum, chance, phase) => sum + chance * second![phase]!, 0);
  return { mean: all, squaredCv: squares / all ** 2 - 1 };
}

describe("phaseTime", () => {
  it.each([0.0625, 0.09, 0.125, 0.2, 0.34, 0.5, 0.75, 0.999, 1, 1.3, 4])(
    "has the mean and the variation it is given, squared coefficient %s",
    (squaredCv) => {
      const found = moments(phaseTime(5.5, squaredCv, 0.05));
      expect(found.mean).toBeCloseTo(5.5, 9);
      expect(found.squaredCv).toBeCloseTo(squaredCv, 9);
    },
  );

  it("takes what varies less than the least as the least", () => {
    expect(phaseTime(3, 0, 0.125)).toEqual(phaseTime(3, 0.125, 0.125));
    expect(phaseTime(3, 0, 0.125).rate).toHaveLength(8);
  });

  it("is one phase for an exponential in all but name", () => {
    expect(moments(phaseTime(2, 1, 0.1)).squaredCv).toBeCloseTo(1, 12);
    expect(phaseTime(2, 1, 0.1).rate[0]).toBe(1);
  });
});
