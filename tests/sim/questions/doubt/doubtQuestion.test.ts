import { describe, expect, it } from "vitest";
import { formatFault, type Plan, type Stage } from "../../../../sim/asked/plan/index.ts";
import { drawsOf } from "../../../../sim/asked/study/index.ts";
import type { Varying } from "../../../../sim/maths/varying/index.ts";
import { doubtPlan, doubtStudy, readDoubt } from "../../../support/doubtCase.ts";

const JAMS = { name: "jams", paths: ["line.skinning.breakdowns.jam.repair"], guess: "a third" };
const CYCLE = {
  name: "cycle",
  paths: ["line.skinning.cycle", "line.cutting.cycle"],
  factor: { uniform: { min: 0.5, max: 1.5 } },
  kind: "measured",
};
const FASTER = { name: "faster", set: { "line.skinning.cycle": "4 s" } };

/** Seconds of a cycle that never varies. */
function cycleOf({ line }: Plan, name: string): number {
  const { cycleSeconds } = line.find((stage) => stage.name === name) as Extract<Stage, { kind: "station" }>;
  return (cycleSeconds as Extract<Varying, { family: "constant" }>).value;
}

describe("doubtQuestion", () => {
  it("puts every variant into every world, with the world's factors on top of its own changes", () => {
    const { question } = readDoubt(doubtStudy(doubtPlan(JAMS, CYCLE), [FASTER]), { worlds: 10, days: 3 });
    expect(question!.variants).toEqual(["base", "faster"]);
    expect(question!.study.variants).toHaveLength(20);
    expect(question!.study.replications).toBe(3);
    const cycle = question!.figures[1]!;
    expect(cycle).toMatchObject({ name: "cycle", kind: "measured", paths: CYCLE.paths });
    expect(cycle.factors).toHaveLength(1);
    for (const [world, factor] of cycle.factors[0]!.entries()) {
      const [today, faster] = question!.study.variants.slice(2 * world, 2 * world + 2).map(({ plan }) => plan);
      expect(cycleOf(today!, "skinning")).toBeCloseTo(5.5 * factor, 9);
      expect(cycleOf(faster!, "skinning")).toBeCloseTo(4 * factor, 9);
      expect(cycleOf(faster!, "cutting")).toBeCloseTo(5.2 * factor, 9);
      expect("uncertain" in today!).toBe(false);
    }
  });

  it("draws each figure once in each of as many equal slices as there are worlds", () => {
    const { figures } = readDoubt(doubtStudy(doubtPlan(CYCLE)), { worlds: 20 }).question!;
    const slices = figures[0]!.factors[0]!.map((factor) => Math.floor((factor - 0.5) * 20));
    expect(slices.sort((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, slice) => slice));
  });

  it("gives the variants of a world the same days, and every world days of its own", () => {
    const { study } = readDoubt(doubtStudy(doubtPlan(JAMS), [FASTER]), { worlds: 10, days: 3 }).question!;
    const first = study.variants.map((_, variant) => drawsOf(study, variant, 0).replication);
    expect(first).toEqual(Array.from({ length: 20 }, (_, variant) => 3 * Math.floor(variant / 2)));
  });

  it("takes figures of several variants together by name, and refuses one name for two ranges", () => {
    const machine = {
      name: "machine",
      set: { uncertain: [{ ...JAMS, name: "cycle", paths: ["line.skinning.cycle"] }] },
    };
    const { question, faults } = readDoubt(doubtStudy(doubtPlan(CYCLE), [machine]));
    expect(question).toBeNull();
    expect(faults.map(formatFault).join()).toMatch(/variant 'machine': uncertain: 'cycle' may be something else/);
    const other = { name: "machine", set: { uncertain: [JAMS] } };
    expect(readDoubt(doubtStudy(doubtPlan(CYCLE), [other])).question!.figures.map(({ name }) => name)).toEqual([
      "cycle",
      "jams",
    ]);
  });

  it("refuses a plan that knows everything, and fewer than two worlds for a figure", () => {
    const { uncertain: _, ...known } = doubtPlan();
    expect(readDoubt(doubtStudy(known)).faults.map(formatFault).join()).toMatch(
      /says of no figure that it is uncertain; .*"guess": "a third"/,
    );
    expect(readDoubt(doubtStudy(doubtPlan()), { worlds: 11 }).faults.map(formatFault)).toEqual([
      "--worlds: 11 worlds for 6 uncertain figures; allowed: 12 or more; draw more worlds",
    ]);
  });

  it("asks for what the study asks for, what its selection goes by first, and for what shows harm", () => {
    const { question } = readDoubt(doubtStudy(doubtPlan(JAMS), [FASTER]));
    expect(question!.responses).toEqual(["finish", "headsPerHour"]);
    expect(question!.study.responses).toContain("carcasses");
    const selection = { response: "headsPerHour", difference: 5, better: "less" };
    const selecting = readDoubt(doubtStudy(doubtPlan(JAMS), [FASTER], { selection })).question!;
    expect(selecting).toMatchObject({ responses: ["headsPerHour", "finish"], better: "less" });
    expect(selecting.study.procedure.selection).toBeNull();
  });
});
