import { describe, expect, it } from "vitest";
import type { Difference } from "../../../../sim/days/results/index.ts";
import { comparisonsInWords } from "../../../../sim/days/results/index.ts";
import { gainEnds, isShownToGain } from "../../../../sim/questions/why/gains.ts";

/** Verdict and printed interval of advice are one procedure, whatever the size of the family. */

const FINISH = { key: "finish", label: "End of work", unit: "s", format: "clock", better: "less" } as const;
const RATE = { key: "headsPerHour", label: "Heads", unit: "heads/h", format: "number", better: "more" } as const;
const OPTIONS = { confidence: 0.95, errorRate: "family-wise" } as const;

const BASE = [0, 0, 0, 0, 0, 0];
/** Mean 10, standard error 3.65: t = 2.74 is beyond 2.57 (one comparison), not beyond 4.03 (five). */
const MIDDLING = [0, 2, 8, 8, 19, 23];
const CLEAR = [99, 101, 100, 98, 102, 100];

function differencesOf(variants: readonly (readonly number[])[], info: typeof FINISH | typeof RATE): Difference[] {
  return comparisonsInWords([BASE, ...variants], 0, OPTIONS, info)
    .slice(1)
    .map((found) => ({ ...found!, joint: found!.comparisons > 1 }));
}

describe("a change that only the single interval would show", () => {
  const noise = [CLEAR, CLEAR, CLEAR, CLEAR];

  it("gains when it is the only one", () => {
    const [difference] = differencesOf([MIDDLING], RATE);
    expect(isShownToGain(difference!, RATE)).toBe(true);
    expect(gainEnds(difference!, RATE)[0]).toBeGreaterThan(0);
  });

  it("is not said to gain among five, and its printed interval holds 0", () => {
    const [difference] = differencesOf([MIDDLING, ...noise], RATE);
    expect(difference!.low).toBeGreaterThan(0);
    expect(isShownToGain(difference!, RATE)).toBe(false);
    expect(gainEnds(difference!, RATE)[0]).toBeLessThan(0);
    expect(gainEnds(difference!, RATE)[1]).toBeGreaterThan(0);
  });
});

describe.each([FINISH, RATE])("a clear change of $key", (info) => {
  const better = info.better === "less" ? -1 : 1;
  const [up, down] = differencesOf([CLEAR, CLEAR.map((value) => -value)], info);

  it("gains one way and loses the other, ends in order", () => {
    expect([up!, down!].map((difference) => isShownToGain(difference, info))).toEqual([better > 0, better < 0]);
    const [low, high] = gainEnds(better > 0 ? up! : down!, info);
    expect(low).toBeGreaterThan(0);
    expect(high).toBeGreaterThan(low);
    expect(gainEnds(better > 0 ? down! : up!, info)).toEqual([-high, -low]);
  });
});

it("knows no end and shows nothing with one day", () => {
  const [difference] = comparisonsInWords([[0], [-50]], 0, OPTIONS, FINISH).slice(1);
  const single = { ...difference!, joint: false };
  expect(isShownToGain(single, FINISH)).toBe(false);
  expect(gainEnds(single, FINISH)).toEqual([50, 50]);
});
