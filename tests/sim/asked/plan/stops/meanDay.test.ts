import { describe, expect, it } from "vitest";
import { meanDayEnd, type Plan } from "../../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import {
  chain,
  constant,
  crew,
  dwell,
  manual,
  onChain,
  pause,
  planOf,
  saturated,
  station,
  stream,
} from "../../../../support/plans.ts";

function simulatedEnd(plan: Plan): number {
  const { supply } = plan;
  // A capacity run counts carcasses and goes on: a stream without pauses between its heads ends like the mean day.
  const finite: Plan = supply.kind === "saturated" ? { ...plan, supply: stream(constant(1e-9), supply.heads) } : plan;
  return runDay(compileLine(finite), { seed: "mean", replication: 0 }).workFinishSeconds;
}

function killLine(places: number): Plan["line"] {
  return [
    manual("hanging", 5, "live", { positions: 1 }),
    station("stunning", 5, { buffer: 2 }),
    manual("sticking", 5, "kill", { buffer: 1 }),
    dwell("bleeding", 60, places),
    manual("skinning", 11, "dressing", { positions: 2, buffer: 4 }),
    manual("evisceration", 5, "dressing", { buffer: 6 }),
  ];
}

const people = [crew("live", 1), crew("kill", 1), crew("dressing", 3)];

function withBreaks(places: number, breaks: Plan["day"]["breaks"], changes: Partial<Plan["day"]> = {}): Plan {
  const plan = planOf(saturated(1500), killLine(places), { crews: people });
  return { ...plan, day: { ...plan.day, breaks, ...changes } };
}

describe("the end of work by mean times", () => {
  it("is that of the hand-worked line: the first head's way, then one head each cycle", () => {
    // a 2 s, b 3 s, c 1 s, ten heads: 2 + 10 x 3 + 1.
    const plan = planOf(saturated(10), [station("a", 2), station("b", 3), station("c", 1)]);
    expect(meanDayEnd(plan)).toBe(33);
    expect(simulatedEnd(plan)).toBeCloseTo(33, 5);
  });

  it("puts off by a break what has not begun: four heads before it, six after it", () => {
    const plan = planOf(saturated(10), [manual("a", 3, "cutters")], { crews: [crew("cutters", 1)] });
    expect(meanDayEnd({ ...plan, day: { ...plan.day, breaks: [pause("rest", 10, 20, { crews: ["cutters"] })] } })).toBe(
      48,
    );
  });

  const rest = (later: Record<string, number>) =>
    [1000, 3000, 5000].map((at, row) =>
      pause(`rest ${row}`, at, 900, { crews: ["live", "kill", "dressing"], laterSeconds: later }),
    );
  const cases: [string, Plan][] = [
    ["no breaks", withBreaks(15, [])],
    ["all at once", withBreaks(15, rest({}))],
    ["dressing first, by a whole break", withBreaks(15, rest({ live: 900, kill: 900 }))],
    ["dressing first, with a long trough", withBreaks(250, rest({ live: 900, kill: 900 }))],
    ["dressing last", withBreaks(15, rest({ dressing: 900 }))],
    ["the machine pauses too", withBreaks(15, [...rest({}), pause("m", 2000, 300, { stages: ["stunning"] })])],
    ["three waves", withBreaks(30, rest({ kill: 120, dressing: 420 }))],
    [
      "a stretch kept empty",
      withBreaks(15, rest({ dressing: 420 }), { safeStop: { from: "stunning", to: "bleeding" } }),
    ],
  ];
  it.each(cases)("is that of a simulated day whose times do not vary: %s", (_, plan) => {
    const [end, reckoned] = [simulatedEnd(plan), meanDayEnd(plan)];
    // Shared people go by a rule of their own in the engine: a few cycles of the line.
    expect(Math.abs(reckoned - end)).toBeLessThan(60);
  });

  it("lets a chain and what rides on it stand while those at it pause", () => {
    const line = [
      manual("hanging", 4, "live"),
      chain("rail", 40, 5, [onChain("legs", 10, 3, 4.5, { crews: ["cut"], peoplePerPosition: 1 })]),
      manual("trim", 4, "cut2", { buffer: 3 }),
    ];
    const plan = planOf(saturated(600), line, { crews: [crew("live", 1), crew("cut", 1), crew("cut2", 1)] });
    const day = {
      ...plan.day,
      breaks: [pause("rest", 1000, 600, { crews: ["cut"] }), pause("late", 2500, 600, { crews: ["cut2"] })],
    };
    expect(Math.abs(meanDayEnd({ ...plan, day }) - simulatedEnd({ ...plan, day }))).toBeLessThan(30);
  });
});
