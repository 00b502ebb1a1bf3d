import { describe, expect, it } from "vitest";
import { meanDayEnd, type Plan } from "../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { runSingleDay } from "../../../../sim/days/run/index.ts";
import { plannedStopCost, plannedStopWords } from "../../../../sim/days/run/plannedStops.ts";
import { constant, crew, dwell, manual, pause, planOf, saturated, station, stream } from "../../../support/plans.ts";

function withBreaks(plan: Plan, breaks: Plan["day"]["breaks"], changes: Partial<Plan["day"]> = {}): Plan {
  return { ...plan, day: { ...plan.day, breaks, ...changes } };
}

function costOf(plan: Plan) {
  const options = { seed: "stops", replication: 0 };
  const day = runDay(compileLine(plan), { ...options, binding: true });
  return { day, options, cost: plannedStopCost(plan, day, options) };
}

/** Heads every 5 s; the trough holds 14, of which 12 are taken while heads flow. */
function trough(places: number, later: Record<string, number>): Plan {
  const line = [
    manual("hanging", 5, "live", { buffer: Infinity }),
    station("stunning", 5, { buffer: 2 }),
    manual("sticking", 5, "kill", { buffer: 1 }),
    dwell("bleeding", 60, places),
    manual("evisceration", 20, "dressing", { positions: 4 }),
  ];
  const crews = [crew("live", 1), crew("kill", 1), crew("dressing", 4)];
  const breaks = [3600, 7200, 10_800].map((at, row) =>
    pause(`rest ${row}`, at, 900, { crews: ["live", "kill", "dressing"], laterSeconds: later }),
  );
  return withBreaks(planOf(stream(constant(5), 2880), line, { crews }), breaks);
}

describe("what planned stops cost", () => {
  it("is the end of work less that of the same day without them", () => {
    // Heads at 10, 20, 30, 40 s, 8 s each: without the break work ends at 48. The break is from 19 to 39 and nobody holds
    // a head: 10-18, 39-47, 47-55, 55-63. The path waits from 20, when the second head is there, to 39.
    const plan = planOf(stream(constant(10), 4), [manual("a", 8, "cutters", { buffer: 9 })], {
      crews: [crew("cutters", 1)],
    });
    const { day, cost } = costOf(withBreaks(plan, [pause("rest", 19, 20, { crews: ["cutters"] })]));
    expect(day.workFinishSeconds).toBe(63);
    expect(cost).toEqual({ lostSeconds: 15, plannedSeconds: 20, lostHeads: 0, where: [{ stage: "a", seconds: 19 }] });
  });

  it("counts a break that comes after the end of work for nothing", () => {
    const plan = planOf(stream(constant(10), 4), [manual("a", 8, "cutters", { buffer: 9 })], {
      crews: [crew("cutters", 1)],
    });
    const { day, cost, options } = costOf(withBreaks(plan, [pause("rest", 100, 20, { crews: ["cutters"] })]));
    expect(cost).toEqual({ lostSeconds: 0, plannedSeconds: 0, lostHeads: 0, where: [] });
    expect(plannedStopWords(plan, cost!, day, options)).toEqual([]);
  });

  it("is heads where hanging ends at an hour", () => {
    const plan = planOf(stream(constant(10), 50), [manual("a", 8, "cutters", { buffer: 99 })], {
      crews: [crew("cutters", 1)],
    });
    const closing = { rule: "stop hanging", atSeconds: 101 } as const;
    // Ten heads come up to 100 s. With the break: three to 38 s, then those that begin at 71, 79, 87 and 95.
    const { day, cost, options } = costOf(
      withBreaks(plan, [pause("rest", 39, 32, { crews: ["cutters"] })], { closing }),
    );
    expect(cost!.lostHeads).toBe(3);
    expect(plannedStopWords(plan, cost!, day, options)[0]).toMatch(/^Planned stops cost 3 heads: /u);
  });

  it("is null without planned stops, for a capacity run, and for a day that did not end", () => {
    const plan = planOf(stream(constant(10), 4), [manual("a", 8, "cutters")], { crews: [crew("cutters", 1)] });
    const rest = [pause("rest", 19, 20, { crews: ["cutters"] })];
    expect(costOf(plan).cost).toBeNull();
    expect(costOf(withBreaks({ ...plan, supply: saturated(4) }, rest)).cost).toBeNull();
    expect(costOf(withBreaks(plan, rest, { ceilingSeconds: 30 })).cost).toBeNull();
  });

  it("is twice the plan where the stage behind pauses first and the trough is short; the path agrees on where", () => {
    const { day, cost } = costOf(trough(14, { live: 900, kill: 900 }));
    const { lostSeconds, plannedSeconds, where } = cost!;
    expect(plannedSeconds).toBe(2700);
    // Each round: 15 min, and 15 min less the 10 s for which two free places carry sticking.
    expect(Math.abs(lostSeconds - 3 * (900 + 890))).toBeLessThan(90);
    const bare = withBreaks(trough(14, {}), []);
    expect(Math.abs(lostSeconds - (meanDayEnd(trough(14, { live: 900, kill: 900 })) - meanDayEnd(bare)))).toBeLessThan(
      60,
    );
    const traced = where.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(Math.abs(traced - lostSeconds)).toBeLessThan(0.05 * lostSeconds);
    expect(day.status).toBe("finished");
  });

  it("is what is planned where all go at once, and where the trough carries the lead", () => {
    for (const plan of [trough(14, {}), trough(14, { dressing: 60 }), trough(192, { live: 900, kill: 900 })]) {
      expect(Math.abs(costOf(plan).cost!.lostSeconds - 2700)).toBeLessThan(120);
    }
  });

  it("is told with where, why and what would fit, and only where it is far above the plan", () => {
    const made = { gambrel: "1", command: "c" };
    const told = runSingleDay(trough(14, { live: 900, kill: 900 }), "1", "none", made).variants[0]!;
    expect(told.dayNotes).toEqual([
      expect.stringMatching(
        /^Planned stops put off the end of work by 1 h (28|29|30); by plan nobody stands longer than 45 min\.$/u,
      ),
      expect.stringMatching(/^The line waited for planned stops at '\w+' for \d+ min/u),
      expect.stringMatching(
        /^Reason: 'evisceration' pauses 15 min before 'sticking', and 'bleeding' between them has room for 2 heads/u,
      ),
      expect.stringMatching(
        /^Breaks with first 'live', 'kill', 'dressing' 1 min later would have ended this day 4\d min sooner; `gambrel why` tries it on more days\.$/u,
      ),
      expect.stringMatching(
        /^"places": 101 at 'bleeding' instead of 14 would have ended this day 2\d min sooner; `gambrel why` tries it/u,
      ),
    ]);
    const fitting = runSingleDay(trough(14, {}), "1", "none", made).variants[0]!;
    expect(fitting.dayNotes).toHaveLength(1);
  });
});
