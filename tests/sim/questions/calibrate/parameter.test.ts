import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { type PlanFigure, parametersOf } from "../../../../sim/questions/calibrate/index.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import {
  chain,
  constant,
  crateStep,
  crew,
  dwell,
  onChain,
  planOf,
  saturated,
  station,
} from "../../../support/plans.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";

const PLAN: Plan = planOf(
  saturated(10),
  [
    station("skinning", { family: "lognormal", mean: 5, cv: 0.3 }, { breakdowns: [breakdown(900, 60)] }),
    chain("rail", 10, 4, [onChain("trim", 2, 3, 8)]),
    dwell("chilling", 3600, 100),
  ],
  {
    crews: [crew("kill", [2, 0])],
    sharedBreakdowns: [shared(["skinning", "rail"], 7200, 300)],
    liveHandling: {
      way: "hand-slid",
      toHanging: [crateStep("unloading", 30)],
      back: [crateStep("crate hosing", 0)],
      cratesAtHanging: 2,
      fleet: null,
    },
  },
);

const parameter = (path: string): PlanFigure => parametersOf(PLAN).find((each) => each.path === path)!;

describe("parametersOf", () => {
  it("lists cycle times, uptimes, repairs and crews wherever work is done, and no zeros", () => {
    expect(parametersOf(PLAN).map(({ kind, path, value }) => [kind, path, value])).toEqual([
      ["cycle", "line.skinning.cycle", 5],
      ["uptime", "line.skinning.breakdowns.jam.uptime", 900],
      ["repair", "line.skinning.breakdowns.jam.repair", 60],
      ["cycle", "line.rail.stations.trim.cycle", 8],
      ["cycle", "liveHandling.unloading.perCrate", 30],
      ["uptime", "sharedBreakdowns.board.uptime", 7200],
      ["repair", "sharedBreakdowns.board.repair", 300],
      ["people", "crews.kill.people", 2],
    ]);
    expect(parameter("line.skinning.breakdowns.jam.repair").label).toBe('mean repair time of "jam" at skinning');
  });

  it("moves one figure and nothing else", () => {
    for (const { path, moved } of parametersOf(PLAN)) {
      const after = parametersOf(moved(PLAN, path.endsWith("people") ? 1 : 1.5));
      const changed = after.filter(({ value }, i) => value !== parametersOf(PLAN)[i]!.value);
      expect(changed.map((each) => each.path)).toEqual([path]);
    }
  });

  it("multiplies times, their spread with them", () => {
    const { line } = parameter("line.skinning.cycle").moved(PLAN, 1.2);
    expect(line[0]).toMatchObject({ cycleSeconds: { family: "lognormal", mean: 6, cv: 0.3 } });
    const back = parameter("liveHandling.unloading.perCrate").moved(PLAN, 2).liveHandling!;
    expect(back.toHanging[0]!.secondsPerCycle).toEqual(constant(60));
  });

  it("adds people to the shifts that have any, and leaves one at least", () => {
    expect(parameter("crews.kill.people").moved(PLAN, 1).crews[0]!.people).toEqual([3, 0]);
    expect(parameter("crews.kill.people").moved(PLAN, -2).crews[0]!.people).toEqual([1, 0]);
  });

  it("leaves the plan as it was", () => {
    const before = structuredClone(PLAN);
    for (const { moved } of parametersOf(PLAN)) moved(PLAN, 2);
    expect(PLAN).toEqual(before);
  });
});
