import { describe, expect, it } from "vitest";
import type { Gain } from "../../../../sim/days/results/index.ts";
import { improveVerdict } from "../../../../sim/questions/improve/improveVerdict.ts";
import type { Improvement, Recommendation } from "../../../../sim/questions/improve/index.ts";
import { moveWords } from "../../../../sim/questions/improve/moveWords.ts";
import { gain, money } from "../../../support/handMadeDecision.ts";
import { inventedImprovement } from "../../../support/invented.ts";

const OVERTIME = { key: "overtime", label: "Overtime", unit: "s", format: "duration", better: "less" } as const;
const ENDS = { today: 33_840, pick: 33_120, startClockSeconds: 21_600 };

function verdictOf(changes: Partial<Recommendation>, more: Partial<Improvement> = {}) {
  const invented = inventedImprovement();
  const recommended = { ...invented.recommended!, counts: [2, 3], gain: gain("gain", 12), ends: ENDS, ...changes };
  return improveVerdict({ ...invented, goal: OVERTIME, matters: 300, recommended, ...more });
}

describe("whether to arrange things anew", () => {
  it("is yes with the move, minutes, money and clock times", () => {
    const free = verdictOf({ money: money("no difference", 0) });
    expect(free.answer).toBe("yes");
    expect(free.verdict).toBe(
      "Yes: move one person from a to b: overtime is 12 min (9 to 15 min) shorter, at no cost; work ends at 15:12 instead of 15:24.",
    );
    const paying = verdictOf({ money: money("gain", 30), ends: null });
    expect(paying.verdict).toMatch(/shorter and it saves 30 EUR a day\.$/);
    expect(paying.next.join(" ")).toMatch(/about 7.500 EUR a year/);
  });

  it("is a matter of choice where it costs more than it saves", () => {
    const found = verdictOf({ money: money("loss", -80) });
    expect(found.answer).toBe("told");
    expect(found.verdict).toMatch(/^It is a matter of choice: .* but it costs 80 EUR a day more than it saves/);
  });

  it("is no where today's arrangement is picked, or the pick gains nothing that matters", () => {
    const stays = verdictOf({ isBase: true, gain: null, ends: { ...ENDS, pick: ENDS.today } });
    expect(stays).toMatchObject({
      ...{ answer: "no", verdict: "No: today's arrangement is as good as any of the 3 tried; work ends at 15:24." },
    });
    const even = verdictOf({ gain: gain("no difference", 0) });
    expect(even.answer).toBe("no");
    expect(even.verdict).toMatch(/the best of the others, to move one person from a to b, gains less than 5 min\.$/);
  });

  it("is too small where less is gained than matters and no money", () => {
    const small = { gain: gain("too small", 4) };
    expect(verdictOf(small)).toMatchObject({ answer: "too small", verdict: expect.stringMatching(/^Hardly: /) });
    expect(verdictOf({ ...small, money: money("gain", 30) }).answer).toBe("yes");
  });

  it("cannot be told where the days leave it open, or none is shown to keep the limits", () => {
    const open: Gain = { size: "open", mean: 100, low: -600, high: 800 };
    expect(verdictOf({ gain: open })).toMatchObject({
      ...{ answer: "undecided", verdict: expect.stringMatching(/^It cannot be told yet: best so far is to move one/) },
    });
    const { finalists } = inventedImprovement();
    const none = (limits: "not shown" | "broken") =>
      verdictOf({}, { recommended: null, finalists: finalists.map((each) => ({ ...each, limits })) });
    expect(none("not shown").answer).toBe("undecided");
    expect(none("broken")).toMatchObject({
      ...{ answer: "no", verdict: "No: each of the 3 best arrangements breaks a limit or does harm." },
    });
  });
});

describe("what has to be moved", () => {
  const words = (base: (number | null)[], counts: number[], kind: "people" | "places" | "budget" = "people") => {
    const elements = base.map((each, index) => ({ name: "ABCD"[index]!, from: 0, to: 9, base: each }));
    const invented = inventedImprovement();
    const recommended = { ...invented.recommended!, name: "A 1", counts };
    return moveWords({ allocated: { ...invented.allocated, kind, elements } }, recommended);
  };

  it.each([
    [[2, 2, 2, 2], [1, 1, 1, 5], "move one each from A, B and C, to D"],
    [[2, 2], [1, 3], "move one person from A to B"],
    [[4, 2], [2, 4], "move two people from A to B"],
    [[4, 2, 1], [2, 1, 4], "move two people from A and one from B, to C"],
    [[4, 2, 1], [2, 3, 2], "move two people from A, one each to B and C"],
    [[1, 2], [0, 3], "move one person from A to B"],
    [[2, 2, 2, 2], [1, 1, 3, 3], "move one each from A and B, to C and D"],
    [[2, 2], [2, 3], "add one person to B"],
    [[2, 2, 2], [1, 3, 4], "take one person from A and add one person to B and two to C"],
    [[20, 2], [8, 2], "take 12 people from A"],
    [[2, 2], [2, 2], "leave it as it is"],
    [[null, 2], [2, 2], "arrange it as A 1"],
  ])("from %j to %j: %s", (base, counts, said) => {
    expect(words(base, counts)).toBe(said);
  });

  it("names what is bought, and before which station places stand", () => {
    expect(words([0, 0], [1, 1], "budget")).toBe("buy “A” and “B”");
    expect(words([5, 5], [2, 8], "places")).toBe("move three places from before A to before B");
  });
});
