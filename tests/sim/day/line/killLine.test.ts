import { describe, expect, it } from "vitest";
import type { Plan, Stage, TimeLimit } from "../../../../sim/asked/plan/plan.ts";
import { killLineOf, stunToStickLimits } from "../../../../sim/day/line/index.ts";
import { chain, constant, dwell, onChain, planOf, station, stream } from "../../../support/plans.ts";
import { withDay } from "../../../support/withDay.ts";

const planWith = (line: Stage[], changes: Partial<Plan> = {}): Plan => planOf(stream(constant(5), 3), line, changes);
const limit = (from: string, to: string, maxSeconds: number | null): TimeLimit => ({
  name: `${from} to ${to}`,
  from: { stage: from, moment: "end" },
  to: { stage: to, moment: "start" },
  minSeconds: maxSeconds === null ? 10 : null,
  maxSeconds,
  source: "",
});

describe("killLineOf", () => {
  it("goes by the names of the steps, from stunning to the last bleeding, and leaves out what is off the line", () => {
    const plan = planWith([
      station("hanging", 1),
      station("Stunning", 1),
      station("turning", 1),
      station("sticking", 1),
      station("sticking by hand", 1, { offLine: true, next: "bleeding" }),
      dwell("bleeding", 20, 5),
      station("skinning", 1),
    ]);
    expect(killLineOf(plan)).toEqual({
      stunning: ["Stunning"],
      sticking: ["sticking", "sticking by hand"],
      bleeding: ["bleeding"],
      steps: ["Stunning", "turning", "sticking", "bleeding"],
    });
  });

  it("takes a chain for the stations that it carries", () => {
    const plan = planWith([
      station("hanging", 1),
      chain("overhead", 12, 2, [onChain("stunning", 1, 2, 1), onChain("sticking", 4, 2, 1)]),
      station("skinning", 1),
    ]);
    expect(killLineOf(plan)).toEqual({
      stunning: ["stunning"],
      sticking: ["sticking"],
      bleeding: [],
      steps: ["overhead"],
    });
    const named = planWith([station("stun", 1), chain("bleeding chain", 12, 2, [onChain("stick", 1, 2, 1)])]);
    expect(killLineOf(named)).toMatchObject({ bleeding: ["bleeding chain"], steps: ["stun", "bleeding chain"] });
  });

  it("goes by the stretch that planned stops leave empty, and by a limit, where names are silent", () => {
    const line = [station("a", 1), station("b", 1), station("c", 1), dwell("d", 9, 5), station("e", 1)];
    expect(killLineOf(planWith(line))).toBeNull();
    const safe = withDay(planWith(line), { safeStop: { from: "a", to: "d" } });
    expect(killLineOf(safe)).toEqual({
      stunning: ["a"],
      sticking: ["b"],
      bleeding: ["d"],
      steps: ["a", "b", "c", "d"],
    });
    const limited = killLineOf({ ...safe, limits: [limit("a", "c", 10)] });
    expect(limited).toMatchObject({ sticking: ["c"], bleeding: ["d"] });
  });

  it("counts the next step as sticking where nothing else says so, be it where heads bleed", () => {
    const plan = planWith([station("stunning", 1), dwell("bleeding", 9, 5), station("skinning", 1)]);
    expect(killLineOf(plan)).toEqual({
      stunning: ["stunning"],
      sticking: ["bleeding"],
      bleeding: ["bleeding"],
      steps: ["stunning", "bleeding"],
    });
  });

  it("finds none where nothing is stunned or nothing comes after it, and takes no drumstick for sticking", () => {
    expect(killLineOf(planWith([station("skinning", 1), station("packing", 1)]))).toBeNull();
    expect(killLineOf(planWith([station("hanging", 1), station("stunning", 1)]))).toBeNull();
    const plan = planWith([station("stunning", 1), station("neck cut", 1), station("drumstick cutting", 1)]);
    expect(killLineOf(plan)).toMatchObject({ sticking: ["neck cut"], steps: ["stunning", "neck cut"] });
  });
});

describe("stunToStickLimits", () => {
  it("are those with a maximum between the two, and no others", () => {
    const line = [station("stunning", 1), station("sticking", 1), dwell("bleeding", 9, 5)];
    const limits = [
      limit("stunning", "sticking", 10),
      limit("stunning", "sticking", null),
      limit("sticking", "bleeding", 9),
    ];
    const plan = planWith(line, { limits });
    expect(stunToStickLimits(plan, killLineOf(plan)!)).toEqual([limits[0]]);
  });
});
