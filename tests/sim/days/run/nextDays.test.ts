import { describe, expect, it } from "vitest";
import { PLAIN_PROCEDURE, type Procedure } from "../../../../sim/asked/study/index.ts";
import { firstDays, nextDays, ruleResponse } from "../../../../sim/days/run/nextDays.ts";
import { threeVariants } from "../../../support/threeVariants.ts";

const RULE = { response: "carcasses", halfWidth: { kind: "absolute", value: 1 }, of: "mean" } as const;
const STOPPING = { ...RULE, atLeast: 10, atMost: 40 };
const SELECTION = {
  ...{ response: "carcasses", better: null, difference: 1, probability: 0.95 },
  ...{ firstStage: 10, atMost: 100 },
};

function studyWith(change: Partial<Procedure>) {
  return threeVariants({ procedure: { ...PLAIN_PROCEDURE, ...change } });
}

/** Values that go up and down by `spread` about `mean`. */
function wave(mean: number, spread: number, days: number): number[] {
  return Array.from({ length: days }, (_, day) => mean + (day % 2 === 0 ? spread : -spread));
}

describe("nextDays", () => {
  it("runs the study's number of days, and no more, where there is no rule", () => {
    const study = studyWith({});
    expect([ruleResponse(study), firstDays(study), nextDays(study, [4, 4, 4], [])]).toEqual([null, [4, 4, 4], null]);
  });

  it("gives every variant as many days as the one that needs most", () => {
    const study = studyWith({ stopping: STOPPING });
    expect(firstDays(study)).toEqual([10, 10, 10]);
    // Half-width t(0.975, 9) x sd / sqrt 10 with sd = 2 sqrt(10/9): 1.508. 10 x 1.508^2 = 22.7, but at most doubled.
    const values = [wave(500, 2, 10), wave(500, 0.1, 10), wave(500, 0.1, 10)];
    expect(nextDays(study, [10, 10, 10], values)).toEqual([20, 20, 20]);
    expect(nextDays(study, [10, 10, 10], [values[1]!, values[1]!, values[1]!])).toBeNull();
  });

  it("stops at the most days allowed", () => {
    const study = studyWith({ stopping: STOPPING });
    const values = [wave(500, 90, 40), wave(500, 90, 40), wave(500, 90, 40)];
    expect(nextDays(study, [40, 40, 40], values)).toBeNull();
  });

  it("runs only those variants on that a selection has not dropped", () => {
    const study = studyWith({ selection: { ...SELECTION, better: "more" } });
    const values = [wave(500, 20, 10), wave(100, 21, 10), wave(500.5, 22, 10)];
    const next = nextDays(study, [10, 10, 10], values)!;
    expect(next[1]).toBe(10);
    // No margin is left at h^2 S^2 / delta^2: h^2 = 9 ((2 x 0.05 / 2)^(-2/9) - 1) = 8.51, S^2 = 4 x 10/9; 37.8.
    expect([next[0], next[2]]).toEqual([38, 38]);
  });

  it("counts both days of antithetic pairs", () => {
    const study = studyWith({ antithetic: true, selection: { ...SELECTION, better: "more" } });
    const days = (mean: number) => Array.from({ length: 10 }, (_, day) => mean + ((day * 7) % 5) * 9);
    const next = nextDays(study, [10, 10, 10], [days(500), days(100), days(501).reverse()])!;
    expect(next[1]).toBe(10);
    expect(next[0]! % 2).toBe(0);
    expect(next[0]).toBeGreaterThan(10);
  });
});
