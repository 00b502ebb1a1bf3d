import { describe, expect, it } from "vitest";
import { readPlan } from "../../../../../sim/asked/plan/index.ts";
import { runDay } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { measure } from "../../../../../sim/day/observations/index.ts";

const MIN = 60;

function planOf(rotation: object, heads: number) {
  const { plan, faults } = readPlan({
    name: "rotation",
    day: {
      shifts: [{ name: "day", from: "06:00", to: "08:00" }],
      breaks: [{ name: "tea", at: "07:00", length: "10 min" }],
    },
    supply: { stream: { interarrival: "60 s", heads } },
    crews: [{ name: "cutters", people: 2, rotation }],
    line: [
      { name: "cutting", kind: "station", cycle: "30 s", buffer: null, crew: "cutters" },
      { name: "trimming", kind: "station", cycle: "30 s", buffer: null, crew: "cutters" },
    ],
  });
  expect(faults).toEqual([]);
  return plan!;
}

describe("people who change places", () => {
  it("do so so long after the start, after a break, and after the last change, and not just before a break or the end", () => {
    const { day, crews } = planOf({ every: "25 min", takes: "2 min" }, 10);
    // 25 to 27, 52 to 54; the break is from 60 to 70; 95 to 97; the next would be at 122, after the end at 120.
    expect(day.breaks.slice(1).map(({ atSeconds }) => atSeconds / MIN)).toEqual([25, 52, 95]);
    expect(day.breaks[1]).toMatchObject({ lengthSeconds: 2 * MIN, crews: ["cutters"], ends: "after its length" });
    expect(crews[0]!.rotates).toBe(true);
    // A change that would end within the break is left to it.
    const late = planOf({ every: "29 min", takes: "2 min" }, 10).day.breaks.slice(1);
    expect(late.map(({ atSeconds }) => atSeconds / MIN)).toEqual([29, 99]);
  });

  it("are told the longest time at one task and the sum of the day, worked by hand", () => {
    const plan = planOf({ every: "25 min", takes: "2 min" }, 100);
    const day = runDay(compileLine(plan), { seed: "x", replication: 0, check: true });
    const found = measure(day, plan);
    // Heads at 1, 2, ..., 100 min; cut and trimmed in half a minute each: work ends at 101 min. Stretches: 25, 25, 6, 25, 4 min.
    expect(day.workFinishSeconds).toBe(101 * MIN);
    expect(found["crew.cutters.longestTask"]).toBe(25 * MIN);
    // On duty but for the break and three changes; two places. Whoever had a head in hand goes later, and comes back later.
    expect(day.crews[0]!.presentSeconds / 2 / MIN).toBe(101 - 10 - 6);
    expect(found["crew.cutters.taskSum"]).toBe(((101 - 16) / 2) * MIN);
  });

  it("do not do so without a rule, and nothing is told of it", () => {
    const { plan } = readPlan({ ...smallest, crews: [{ name: "cutters", people: 2 }] });
    expect(plan!.day.breaks).toEqual([]);
    expect(plan!.crews[0]).not.toHaveProperty("rotates");
  });
});

const smallest = {
  name: "smallest",
  day: { shifts: [{ name: "day", from: "06:00", to: "08:00" }] },
  supply: { saturated: { heads: 10 } },
  line: [{ name: "cutting", kind: "station", cycle: "5 s", crew: "cutters" }],
};
