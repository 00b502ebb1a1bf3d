import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../../sim/asked/plan/plan.ts";
import { type DaysOptions, type DaysRecord, runDays } from "../../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../../sim/day/line/index.ts";
import { breakdown } from "../../../../support/breakdowns.ts";
import { handling, load } from "../../../../support/loads.ts";
import { constant, crateStep, crew, dwell, manual, planOf, station, stream } from "../../../../support/plans.ts";
import { passes } from "../../../../support/timeline.ts";

/** Days start so many seconds after each other. */
const APART = 1000;

function days(plans: readonly Plan[], options: Partial<DaysOptions> = {}): DaysRecord {
  const all = plans.map((plan, number) => ({ line: compileLine(plan), startSeconds: number * APART, number }));
  const always = { seed: "test", replication: 0, calendarDays: plans.length, check: true, perHead: true };
  return runDays(all, { ...always, ...options });
}

/** A day on which hanging ends, heads leave a stage until an hour, or both. */
function ending(plan: Plan, hangingEnds: number | null, stage: string | null = null, untilSeconds = 0): Plan {
  const closing = hangingEnds === null ? plan.day.closing : { rule: "stop hanging" as const, atSeconds: hangingEnds };
  return { ...plan, day: { ...plan.day, closing, overnight: stage === null ? [] : [{ stage, untilSeconds }] } };
}

describe("carcasses in a chiller that nobody empties any more today", () => {
  // A head every 10 s, killed in 1 s, chilled 100 s, packed in 5 s: packing starts at 111, 121, 131, 141.
  const line = [station("kill", 1), dwell("chiller", 100, Infinity), station("packing", 5, { buffer: Infinity })];
  const heads = (number: number) => planOf(stream(constant(10), number), line);

  it("stay until the next day, their time up in the night, and are packed first", () => {
    // Two leave by 125: packing 111 and 121. The others' time is up at 131 and 141: the day ends at 126, with the second one's
    // packing. The next day begins with both at the packing station at once: 0 and 5; its own heads follow at 111 and 121.
    const { days: records, status } = days([ending(heads(4), null, "chiller", 125), heads(2)]);
    expect(status).toBe("finished");
    expect(records[0]).toMatchObject({ finishSeconds: 126, heads: { out: { carcass: 2 }, onLine: 2 } });
    expect(records[1]!.heads).toMatchObject({
      arrived: 2,
      out: { carcass: 4 },
      fromBefore: { inLairage: 0, onLine: 2 },
    });
    expect(passes(records[1]!, "packing", "start")).toEqual([0, 5, 111, 121]);
    // Their time was up before the day began.
    expect(passes(records[1]!, "chiller", "end")).toEqual([131 - APART, 141 - APART, 111, 121]);
  });

  it("stay when their time was up long before and the place behind was taken; the chiller closes with no harm", () => {
    // Ready at 111, 121, 131, 141, 151; packing takes 25 s and has no room before it: 111, 136. At 145 the third waits in the
    // way out, so it still goes, at 161; the fourth, ready at 141, and the fifth, ready at 151, stay.
    const slow = [station("kill", 1), dwell("chiller", 100, Infinity), station("packing", 25)];
    const plan = planOf(stream(constant(10), 5), slow);
    const { days: records, status } = days([ending(plan, null, "chiller", 145), planOf(stream(constant(10), 1), slow)]);
    expect(status).toBe("finished");
    // The other two have not come there.
    expect(passes(records[0]!, "packing", "start")).toEqual([111, 136, 161, NaN, NaN]);
    expect(records[0]).toMatchObject({ finishSeconds: 186, heads: { out: { carcass: 3 }, onLine: 2 } });
    expect(passes(records[1]!, "packing", "start")).toEqual([0, 25, 111]);
  });

  it("go on chilling in the morning when the night was too short", () => {
    // 1200 s in the chiller: the only head goes in at 11, and the next day begins at 1000, so 211 are left.
    const slow = [station("kill", 1), dwell("chiller", 1200, Infinity), station("packing", 5)];
    const plan = planOf(stream(constant(10), 1), slow);
    const { days: records } = days([ending(plan, null, "chiller", 50), plan]);
    // The first day ends when the stage closes.
    expect(records[0]!.finishSeconds).toBe(50);
    expect(passes(records[1]!, "packing", "start")).toEqual([211, 1211]);
  });

  it("have their time up in a closed stage, too, while the line still fills it", () => {
    // Twenty heads, the last killed at 201; the chiller closes at 125 with two gone. Time is up at 131, 141, ..., 201 on the
    // same day, of the others in the night; the day ends when the last one hangs.
    const { days: records } = days([ending(heads(20), null, "chiller", 125), heads(1)]);
    expect(records[0]).toMatchObject({
      status: "finished",
      finishSeconds: 201,
      heads: { out: { carcass: 2 }, onLine: 18 },
    });
    expect(passes(records[0]!, "chiller", "end").filter((end) => end > 125)).toEqual([
      131, 141, 151, 161, 171, 181, 191, 201,
    ]);
    expect(records[1]!.heads.out.carcass).toBe(19);
  });

  it("count on their limit from the day before, on the account of the day on which their time is up", () => {
    const limit = {
      name: "chilled",
      from: { stage: "kill", moment: "end" as const },
      to: { stage: "packing", moment: "start" as const },
      minSeconds: null,
      maxSeconds: 500,
      source: "",
    };
    const plan = planOf(stream(constant(10), 4), line, { limits: [limit as never] });
    const { days: records } = days([ending(plan, null, "chiller", 125), plan]);
    expect(records[0]!.limits[0]).toMatchObject({ beyond: 0, tally: { count: 2 } });
    // Killed by 31 and 41, packed at 1000 and 1005 of the first day's clock.
    expect(records[1]!.limits[0]).toMatchObject({ beyond: 2, tally: { count: 6, max: 969 } });
  });

  it("hang two to a hook as they did: a hook is free when its last head is gone", () => {
    // Four places are two hooks. The first day leaves one head on the second hook. Of the second day's heads the first hangs
    // beside it, the next two on the other hook, and the fourth waits for the first hook to be free: both its heads are gone at 211.
    const hooks = [station("kill", 1), dwell("chiller", 200, 4, { headsPerHook: 2 }), station("out", 1)];
    const first = planOf(stream(constant(10), 1), hooks);
    const second = planOf(stream(constant(10), 4), hooks);
    const { days: records } = days([ending(first, null, "chiller", 50), second]);
    expect(passes(records[1]!, "chiller", "entry").slice(1)).toEqual([11, 21, 31, 211]);
  });
});

describe("animals that were not hung when hanging ended", () => {
  // Ten heads in five crates; unloading 1 s a crate, feeding 1 s, hanging 10 s a head: 2, 12, 22, ...
  const plan = (loads: Parameters<typeof load>[]) =>
    planOf({ kind: "loads", loads: loads.map((each) => load(...each)) }, [station("hanging", 10)], {
      liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)]),
    });

  it("stay in their crates in lairage and are hung first, with their waiting counted from their arrival", () => {
    const first = plan([["evening", 0, 5, 2]]);
    const second = plan([["morning", 0, 1, 2]]);
    const { days: records, lots } = days([ending(first, 30), second]);
    expect(records[0]!.heads).toMatchObject({ arrived: 10, hung: 3, inLairage: 7, out: { carcass: 3 } });
    expect(records[1]!.heads).toMatchObject({ arrived: 2, hung: 9, fromBefore: { inLairage: 7, onLine: 0 } });
    // The crate at the hanging point still has one head, so it is hung at once; then four crates, fed meanwhile.
    expect(passes(records[1]!, "hanging", "start")).toEqual([0, 10, 20, 30, 40, 50, 60, 70, 80]);
    expect(records[1]!.timeInSystem.max).toBe(APART + 70);
    expect(lots.map(({ name, day, out, lastOutSeconds }) => [name, day, out.carcass, lastOutSeconds])).toEqual([
      ["evening", 0, 10, APART + 70],
      ["morning", 1, 2, APART + 90],
    ]);
  });

  it("were brought into lairage before the day was over", () => {
    // Hanging ends at 3, its only head leaves at 12; unloading goes on until 5, and only then is the day over.
    const slow = planOf({ kind: "loads", loads: [load("evening", 0, 20, 1)] }, [station("hanging", 1)], {
      liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)]),
    });
    const { days: records } = days([ending(slow, 3), slow]);
    expect(records[0]!.finishSeconds).toBe(20);
    expect(records[0]!.loads[0]!.unloadedSeconds).toBe(20);
  });

  it("and came on a lorry of the night have waited on it since it came", () => {
    const first = plan([
      ["noon", 0, 1, 1],
      ["night", 600, 1, 1],
    ]);
    const { days: records, lots } = days([ending(first, 30), plan([["morning", 500, 1, 1]])]);
    expect(records[0]!.heads).toMatchObject({ arrived: 1, inLairage: 0 });
    // There since 600 of the first day; unloaded in the morning: 1 s and 1 s of feeding.
    expect(passes(records[1]!, "hanging", "start")).toEqual([2, 502]);
    expect(records[1]!.timeInSystem.max).toBe(APART - 600 + 12);
    expect(lots[1]).toMatchObject({ name: "night", day: 0, arrivedSeconds: 600, lastOutSeconds: APART + 12 });
  });
});

describe("vessels and machines", () => {
  const byProducts = [{ name: "blood", share: 0.4, of: "live weight" as const, vessel: "tank" }];
  const tank = {
    name: "tank",
    capacityKg: 3,
    emptyAtKg: 3,
    emptyingSeconds: 20,
    crew: null,
    whenFull: "stop" as const,
  };

  it("hold in the morning what they held in the evening", () => {
    // One kilogram a head: two on the first day; the first head of the second day fills the tank at 3, 3-23 is lost.
    const plan = planOf(stream(constant(2), 2), [station("a", 1, { buffer: Infinity, byProducts })], {
      vessels: [tank],
    });
    const { days: records } = days([plan, plan]);
    expect(records[0]!.vessels[0]).toMatchObject({ emptied: 0, maxKg: 2 });
    expect(passes(records[1]!, "a", "start")).toEqual([2, 23]);
    expect(records[1]!.vessels[0]).toMatchObject({ maxKg: 3, fullSeconds: 20 });
  });

  it("have run as long in the morning as in the evening, or are as new", () => {
    // A jam after every 25 s of work, 100 s long; a day is 20 s of work: it strikes on the second day after 5 s.
    const jam = breakdown(25, 100, { uptimeSeconds: constant(25), repairSeconds: constant(100) });
    const plan = planOf(stream(constant(10), 2), [station("a", 10, { breakdowns: [jam] })]);
    expect(days([plan, plan]).days.map(({ finishSeconds }) => finishSeconds)).toEqual([30, 130]);
    expect(days([plan, plan], { machinesAsNew: true }).days.map(({ finishSeconds }) => finishSeconds)).toEqual([
      30, 30,
    ]);
  });
});

describe("a day that does not end before the next one begins", () => {
  it("ends the days, and says so", () => {
    const plan = planOf(stream(constant(10), 200), [station("a", 1)]);
    const { days: records, status } = days([plan, plan]);
    expect(status).toBe("overrun");
    expect(records).toHaveLength(1);
  });

  it("is none when people who went home left crates where they were", () => {
    // The unloader is there until 5 and does three crates and a fourth in hand; the hanger hangs them one by one until 12.
    const shifts = [
      { name: "early", fromSeconds: 0, toSeconds: 5 },
      { name: "late", fromSeconds: 5, toSeconds: 100 },
    ];
    const step = { ...crateStep("unloading", 1.5), crews: ["live"], peoplePerPosition: 1 };
    const base = planOf({ kind: "loads", loads: [load("lorry", 0, 9, 1)] }, [manual("hanging", 1, "hangers")], {
      crews: [crew("live", [1, 0]), crew("hangers", [1, 1])],
      liveHandling: handling([step, crateStep("feeding", 0.25)]),
    });
    const plan = { ...base, day: { ...base.day, shifts } };
    const { days: records, status } = days([ending(plan, 12), ending(plan, 400)]);
    expect(status).toBe("finished");
    expect(records[0]!.heads).toMatchObject({ hung: 4, inLairage: 5 });
  });
});
