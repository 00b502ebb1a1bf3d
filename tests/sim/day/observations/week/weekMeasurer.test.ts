import { describe, expect, it } from "vitest";
import type { Plan, Week } from "../../../../../sim/asked/plan/index.ts";
import { compileWeek, runWeek } from "../../../../../sim/day/engine/index.ts";
import {
  dayNotes,
  responsesOf,
  usualResponses,
  weekMeasurer,
  weekNeedsBinding,
} from "../../../../../sim/day/observations/index.ts";
import { constant, crew, dwell, manual, planOf, station, stream } from "../../../../support/plans.ts";

const DAY = 86_400;

/** A head every 10 s, 1 s of work; in all as many as the day has. */
function dayPlan(heads: number, changes: Partial<Plan["day"]> = {}): Plan {
  const limits = [
    {
      name: "kill to out",
      from: { stage: "kill", moment: "end" as const },
      to: { stage: "packing", moment: "start" as const },
      minSeconds: null,
      maxSeconds: 150,
      source: "",
    },
  ];
  const line = [
    station("kill", 1),
    dwell("chiller", 100, Number.POSITIVE_INFINITY),
    station("packing", 5, { buffer: 9 }),
  ];
  const plan = planOf(stream(constant(10), heads), line, { limits: limits as never });
  return { ...plan, day: { ...plan.day, ...changes } };
}

function weekOf(days: (Plan | null)[], changes: Partial<Week> = {}): Plan {
  const usual = dayPlan(4);
  const names = ["Monday", "Tuesday", "Wednesday", "Thursday"];
  const all = days.map((plan, index) => ({
    name: names[index]!,
    plan,
    startSeconds: index * DAY + (plan?.day.startClockSeconds ?? 0),
  }));
  const week = { begins: null, days: all, warmUpDays: 0, machinesAsNew: false, orders: [], ...changes };
  return { ...usual, week };
}

function values(plan: Plan, keys: readonly string[]): Record<string, number | null> {
  const record = runWeek(compileWeek(plan), { seed: "1", replication: 0, check: true });
  const found = weekMeasurer(plan, keys)(record);
  return Object.fromEntries(keys.map((key, row) => [key, found[row]!]));
}

describe("what is measured of a week", () => {
  it("is each day's, the mean of the days, and the sum, worked by hand", () => {
    // Four, two and no heads: packed at 111, 121, 131, 141 and 111, 121; work ends 5 s later.
    const plan = weekOf([dayPlan(4), dayPlan(2), null]);
    const keys = ["Monday.carcasses", "Tuesday.carcasses", "carcasses", "week.carcasses", "Monday.finish", "finish"];
    expect(values(plan, keys)).toEqual({
      "Monday.carcasses": 4,
      "Tuesday.carcasses": 2,
      carcasses: 3,
      "week.carcasses": 6,
      "Monday.finish": 146,
      finish: (146 + 126) / 2,
    });
  });

  it("takes shares of heads over all heads of the week, and the worst of any day", () => {
    // Monday closes the chiller at 125: two heads stay, and are packed on Tuesday at 0 and 5, beyond the limit; then its own two.
    const monday = dayPlan(4, { overnight: [{ stage: "chiller", untilSeconds: 125 }] });
    const found = values(weekOf([monday, dayPlan(2)]), [
      "beyond.kill to out",
      "Tuesday.beyond.kill to out",
      "worst.kill to out",
    ]);
    expect(found["beyond.kill to out"]).toBe(2 / 6);
    expect(found["Tuesday.beyond.kill to out"]).toBe(2 / 4);
    // Killed at 31 of Monday, packed at once on Tuesday.
    expect(found["worst.kill to out"]).toBe(DAY - 31);
  });

  it("counts an hour from the usual day's start, whenever a day's own clock starts", () => {
    const usual = dayPlan(4);
    const early = dayPlan(2, { startClockSeconds: usual.day.startClockSeconds - 3600 });
    expect(values(weekOf([dayPlan(4), early]), ["Tuesday.finish"])).toEqual({ "Tuesday.finish": 126 - 3600 });
  });

  it("leaves the days of the warm-up out, but for what they leave behind", () => {
    const monday = dayPlan(4, { overnight: [{ stage: "chiller", untilSeconds: 125 }] });
    const plan = weekOf([monday, dayPlan(2)], { warmUpDays: 1 });
    expect(responsesOf(plan).some(({ key }) => key.startsWith("Monday."))).toBe(false);
    expect(values(plan, ["week.carcasses", "Tuesday.carcasses"])).toEqual({
      "week.carcasses": 4,
      "Tuesday.carcasses": 4,
    });
  });

  it("tells of orders whether they are ready at their times, how late, and what is missing then", () => {
    const start = dayPlan(4).day.startClockSeconds;
    const order = (name: string, bySeconds: number, carcasses: number | null, kilograms: number | null = null) => {
      return { name, bySeconds: start + bySeconds, carcasses, kilograms };
    };
    // Out at 116, 126, 136, 146: three at 140 are there; of two more one is out at 146, the other on Tuesday at 116; 2.5 kg each: at 126.
    const orders = [order("first", 140, 3), order("second", 150, 2), order("third", DAY + 200, null, 2.5)];
    const plan = weekOf([dayPlan(4), dayPlan(2)], { orders });
    const keys = orders.flatMap(({ name }) => [`order.${name}.late`, `order.${name}.short`]);
    expect(values(plan, ["ordersMet", ...keys])).toEqual({
      ordersMet: 2 / 3,
      "order.first.late": 0,
      "order.first.short": 0,
      "order.second.late": DAY + 116 - 150,
      "order.second.short": 1,
      "order.third.late": 0,
      "order.third.short": 0,
    });
  });

  it("has no sums where the week was cut short, and says that it was", () => {
    const endless = dayPlan(9000);
    const found = values(weekOf([endless, dayPlan(2)]), ["week.carcasses", "unfinished", "Tuesday.carcasses"]);
    expect(found).toEqual({ "week.carcasses": null, unfinished: 1, "Tuesday.carcasses": null });
  });

  it("tells the shortest rest between two days", () => {
    // Shifts last longer than work: from the end of Monday's shift to the start of Tuesday's.
    const plan = weekOf([dayPlan(4), dayPlan(2)]);
    const { shifts } = dayPlan(4).day;
    expect(values(plan, ["rest.shortest"])).toEqual({
      "rest.shortest": DAY - shifts[0]!.toSeconds + shifts[0]!.fromSeconds,
    });
  });

  it("is known by key, label and unit, each key once, and the usual ones are among them", () => {
    const plan = weekOf([dayPlan(4), dayPlan(2)]);
    const keys = responsesOf(plan).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const key of usualResponses(plan)) expect(keys).toContain(key);
  });

  it("tells of a week cut short on which day, whose people were missing, and why nobody stepped in", () => {
    const cover = { by: [{ crew: "others", keeps: 2 }], atLeast: [1] };
    const manned = (absentShare: number): Plan => ({
      ...dayPlan(4),
      line: [manual("kill", 1, "one", { buffer: 9 }), manual("packing", 5, "others", { buffer: 9, positions: 2 })],
      limits: [],
      crews: [crew("one", 1, { absentShare, cover }), crew("others", 2)],
    });
    const plan = weekOf([manned(0), manned(1), manned(0)]);
    expect(values(plan, ["unfinished", "cutShort.one", "cutShort.others", "Monday.carcasses"])).toEqual({
      unfinished: 1,
      "cutShort.one": 1,
      "cutShort.others": null,
      "Monday.carcasses": 4,
    });
    const record = runWeek(compileWeek(plan), { seed: "1", replication: 0 });
    expect(dayNotes(plan, { ...record.days[0]!, week: record })).toEqual([
      "The week is cut off on Tuesday, which did not end.",
      "Absent today: 'one' 1 of 1.",
      "4 heads at 'kill' stay unworked: nobody of 'one' came today (1 absent), and 'others' had nobody to spare.",
    ]);
  });

  it("tells of each day what its end was owed to, where that is asked for", () => {
    // Of Monday two heads stay, packed on Tuesday at 0 and 5; then its own two, at 111 and 121.
    const monday = dayPlan(4, { overnight: [{ stage: "chiller", untilSeconds: 125 }] });
    const tuesday = dayPlan(40, { overnight: [] });
    const plan = weekOf([monday, tuesday]);
    const keys = ["Monday.bound.work.packing", "Tuesday.bound.leftOver.packing", "Tuesday.bound.arrivals"];
    expect(weekNeedsBinding(plan, keys)).toBe(true);
    expect(weekNeedsBinding(plan, ["Monday.finish", "cost.bound.x"])).toBe(false);
    const record = runWeek(compileWeek(plan), { seed: "1", replication: 0, binding: true });
    // Tuesday ends with its last head: 400 s until it comes, killed in 1, chilled 100, packed in 5.
    expect(weekMeasurer(plan, keys)(record)).toEqual([5, 0, 400]);
  });
});
