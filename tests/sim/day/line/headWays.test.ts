import { describe, expect, it } from "vitest";
import { besideOf, compileLine, waysOn } from "../../../../sim/day/line/index.ts";
import { chain, constant, dwell, onChain, planOf, station, stream } from "../../../support/plans.ts";

const jam = {
  name: "jam",
  clock: "running" as const,
  scope: "position" as const,
  uptimeSeconds: constant(100),
  repairSeconds: constant(5),
  crew: null,
  headInHand: { to: "by hand" },
};
const line = compileLine(
  planOf(stream(constant(10), 3), [
    station("a", 5, { breakdowns: [jam] }),
    chain("rail", 6, 2, [onChain("cut", 1, 2, 3)], { unfinishedTo: "trim" }),
    station("b", 5, { diversions: [{ to: "trim", share: 0.1 }] }),
    station("by hand", 9, { offLine: true, next: "b" }),
    station("trim", 7, { offLine: true, next: "second trim" }),
    station("second trim", 7, { offLine: true }),
    dwell("chilling", 100, Infinity),
  ]),
);
const { names } = line.stages;
const named = (stages: number[][]) =>
  Object.fromEntries(stages.map((row, stage) => [names[stage], row.map((each) => names[each]).sort()]));

describe("the ways of heads", () => {
  it("lead on, aside, off a machine that broke, past the stations of a chain, and back", () => {
    expect(named(waysOn(line))).toEqual({
      a: ["by hand", "rail"],
      rail: ["b", "cut", "trim"],
      cut: ["b"],
      b: ["chilling", "trim"],
      "by hand": ["b"],
      trim: ["second trim"],
      "second trim": ["chilling"],
      chilling: [],
    });
  });

  it("tell of a stage beside the line which stages of the line send heads there, over others beside it too", () => {
    expect(named(besideOf(line, waysOn(line)))).toEqual({
      a: [],
      rail: [],
      cut: [],
      b: [],
      "by hand": ["a"],
      trim: ["b", "rail"],
      "second trim": ["b", "rail"],
      chilling: [],
    });
  });
});
