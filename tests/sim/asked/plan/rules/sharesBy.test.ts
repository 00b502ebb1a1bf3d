import { describe, expect, it } from "vitest";
import { type Loose, stageOf, wholeFaults } from "../wholeMessages.ts";

const faults = (removal: object, stage = "inspection") =>
  wholeFaults((plan: Loose) => {
    stageOf(plan, stage).removals = [{ as: "condemned", ...removal }];
  }).map((words) => words.replace(/^line\[\d+\]\./, ""));
const weight = [
  { at: "2 kg", share: "1 %" },
  { at: "3 kg", share: "4 %" },
];
const time = [
  { at: "0 s", share: 0 },
  { at: "2 h", share: "4 %" },
];

describe("shares that depend on the head", () => {
  it("are by weight, or by a time between points that lies before the stage's end", () => {
    expect(faults({ shareBy: { weight } })).toEqual([]);
    expect(faults({ shareBy: { weight, between: "steps" } })).toEqual([]);
    expect(faults({ shareBy: { time, from: "arrival", to: "start of stunning" } })).toEqual([]);
    expect(faults({ shareBy: { time, from: "end of stunning" } })).toEqual([]);
  });

  it("stand for a share and not beside it", () => {
    expect(faults({})[0]).toBe(
      'removals[0]: neither a share nor a shareBy; allowed: exactly one of "share" and "shareBy"; write for example "share": "1 %"',
    );
    expect(faults({ share: "1 %", shareBy: { weight } })[0]).toMatch(/^removals\[0\]: both a share and a shareBy/);
  });

  it("depend on one thing, which is said in full", () => {
    expect(faults({ shareBy: {} })[0]).toMatch(/^removals\[0\]\.shareBy: neither a weight nor a time/);
    expect(faults({ shareBy: { weight, time, from: "arrival" } })[0]).toMatch(/both a weight and a time/);
    expect(faults({ shareBy: { time } })[0]).toMatch(/a time without the point where it starts/);
    expect(faults({ shareBy: { weight, from: "arrival" } })[0]).toMatch(
      /^removals\[0\]\.shareBy\.from: a weight has no time/,
    );
  });

  it("have points in their order, and times that are over where they count", () => {
    expect(faults({ shareBy: { weight: [...weight].reverse() } })[0]).toMatch(
      /^removals\[0\]\.shareBy\.weight\[1\]\.at: "2 kg" is not more than "3 kg"/,
    );
    expect(faults({ shareBy: { time, from: "arrival", to: "exit from chilling" } })[0]).toMatch(
      /"exit from chilling" comes after the end of inspection, where the share is decided/,
    );
    expect(faults({ shareBy: { time, from: "start of chilling" } })[0]).toMatch(
      /does not come after "start of chilling"/,
    );
    expect(faults({ shareBy: { time, from: "start of stuning" } })[0]).toMatch(/'stuning' is not a stage/);
  });

  it("count with the most that they give towards 100 %", () => {
    const most = [{ at: "2 kg", share: "100 %" }];
    const found = wholeFaults((plan: Loose) => {
      stageOf(plan, "inspection").removals = [
        { as: "condemned", share: "1 %" },
        { as: "b", shareBy: { weight: most } },
      ];
    });
    expect(found[0]).toMatch(/the shares add up to more than 1/);
  });
});
