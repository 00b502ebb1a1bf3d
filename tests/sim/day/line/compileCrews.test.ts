import { describe, expect, it } from "vitest";
import { CREW_RULES } from "../../../../sim/asked/plan/plan.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { chain, crew, manual, onChain, planOf, saturated, station } from "../../../support/plans.ts";
import { withDay } from "../../../support/withDay.ts";

describe("compileCrews", () => {
  const line = [
    manual("a", 1, "x"),
    chain("c", 4, 1, [onChain("w", 0, 2, 1, { crews: ["y", "x"], peoplePerPosition: 1 })]),
    manual("b", 1, "y"),
    station("m", 1),
  ];
  const crews = [crew("x", [2, 5], { rule: "fixed order", walkSeconds: 3 }), crew("y", 1), crew("idle", 1)];

  it("lists the stages that each crew may work at, in line order, stations on chains included", () => {
    const compiled = compileLine(planOf(saturated(1), line, { crews })).crews;
    expect(Array.from(compiled.stationFrom)).toEqual([0, 2, 4, 4]);
    // Stages: a 0, c 1, w 2, b 3, m 4.
    expect(Array.from(compiled.stations)).toEqual([0, 2, 2, 3]);
    expect(Array.from(compiled.peopleMax)).toEqual([5, 1, 1]);
    expect(CREW_RULES[compiled.rule[0]!]).toBe("fixed order");
    expect(compiled.walkSeconds[0]).toBe(3);
  });

  it("marks the crews that work on the protected stretch", () => {
    const plan = withDay(planOf(saturated(1), line, { crews }), { safeStop: { from: "b", to: "m" } });
    expect(Array.from(compileLine(plan).crews.protected)).toEqual([0, 1, 0]);
  });
});
