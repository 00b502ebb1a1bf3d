import { describe, expect, it } from "vitest";
import type { LiveHandling, Load } from "../../../../sim/asked/plan/plan.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { handling, load } from "../../../support/loads.ts";
import { crateStep, crew, planOf, station } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

function day(loads: Load[], liveHandling: LiveHandling, hangingSeconds: number) {
  return runChecked(planOf({ kind: "loads", loads }, [station("hanging", hangingSeconds)], { liveHandling }));
}

// Crates of one head each unless said otherwise: a crate at the hanging point is empty when its head is taken in hand.

describe("a crate step that takes a stack of three", () => {
  it("works on what is there and does not wait for more", () => {
    // Four crates, 10 s a stack: three done at 10, one at 20. Fed one by one, 5 s: 15, 20, 25, 30.
    const steps = [crateStep("unloading", 10, { cratesPerCycle: 3 }), crateStep("feeding", 5)];
    const record = day([load("lorry", 0, 4, 1)], handling(steps), 1);
    expect(passes(record, "hanging", "start")).toEqual([15, 20, 25, 30]);
    expect(record.stages[0]).toMatchObject({ name: "unloading", processed: 4 });
    expect(secondsIn(record, "unloading").working).toBe(20);
    expect(record.loads[0]!.unloadedSeconds).toBe(20);
  });

  it("lets crates go one by one as places come free, and takes no other stack before the last is gone", () => {
    // One place before the feeder: at 10 one crate goes into the feeder, one waits, the third stays in hand until 15, when
    // the feeder takes the second. The next stack is unloaded 15-25. Fed: 15, 20, 25, and the fourth 25-30.
    const steps = [crateStep("unloading", 10, { cratesPerCycle: 3 }), crateStep("feeding", 5, { places: 1 })];
    const record = day([load("lorry", 0, 4, 1)], handling(steps), 1);
    expect(passes(record, "hanging", "start")).toEqual([15, 20, 25, 30]);
    expect(secondsIn(record, "unloading")).toMatchObject({ working: 20, blocked: 5 });
    expect(record.loads[0]!.unloadedSeconds).toBe(25);
  });

  it("a level of two comes to the hanging point together when both have a place there", () => {
    // Unloaded at 2, 4, 6. Destacking 6 s a level: the first crate alone 2-8, the two others 8-14. Both then stand at the
    // hanging point, which empties them at 14 and 15.
    const steps = [crateStep("unloading", 2), crateStep("destacking", 6, { cratesPerCycle: 2 })];
    const record = day([load("lorry", 0, 3, 1)], handling(steps, [], { cratesAtHanging: 2 }), 1);
    expect(passes(record, "hanging", "start")).toEqual([8, 14, 15]);
  });
});

describe("crates on their way back", () => {
  const toHanging = [crateStep("unloading", 1), crateStep("feeding", 1)];

  it("stop the hanging point while there is no place before the washer", () => {
    // Crates come at 2, 3, 4, 5, 6; hanging takes 2 s; the washer 10 s with one place before it. Crate 1 into the washer at
    // 2 (done 12), crate 2 (empty at 4) before it, crate 3 (empty at 6) stays until 12, crate 4 (12) until 22, crate 5
    // (22) until 32. Washed at 12, 22, 32, 42, 52: then the lorry leaves and the day is over.
    const record = day([load("lorry", 0, 5, 1)], handling(toHanging, [crateStep("washer", 10, { places: 1 })]), 2);
    expect(passes(record, "hanging", "start")).toEqual([2, 4, 6, 12, 22]);
    expect(record.loads[0]).toMatchObject({ emptiedSeconds: 22, washedSeconds: 52, leftSeconds: 52 });
    expect(record.finishSeconds).toBe(52);
    expect(record.workFinishSeconds).toBe(24);
  });

  it("are restacked before they go onto the lorry", () => {
    // Empty at 2, 4, 6; washed (2 s) at 4, 6, 8. Restacking 6 s, up to three: the first alone 4-10, two 10-16.
    const back = [crateStep("washer", 2), crateStep("restacking", 6, { cratesPerCycle: 3 })];
    const record = day([load("lorry", 0, 3, 1)], handling(toHanging, back), 2);
    expect(record.loads[0]!.leftSeconds).toBe(16);
    expect(record.stages.find((stage) => stage.name === "restacking")!.processed).toBe(3);
  });

  it("fill the lorries in the order in which these came, each with as many as it brought", () => {
    // Two crates, then one of the second lorry: empty at 2, 4, 6; washed (10 s each) at 12, 22, 32.
    const loads = [load("first", 0, 2, 1), load("second", 0.5, 1, 1)];
    const record = day(loads, handling(toHanging, [crateStep("washer", 10)]), 2);
    expect(record.loads.map((each) => each.leftSeconds)).toEqual([22, 32]);
    expect(record.loads.map((each) => each.washedSeconds)).toEqual([22, 32]);
  });

  it("that come off slowly keep their lorry until the last of them is clean", () => {
    // The second crate leaves the lorry at 21 only; the first was clean at 14: crate 2 is empty at 22, clean at 24.
    const steps = [crateStep("unloading", 10.5), crateStep("feeding", 1)];
    const record = day([load("lorry", 0, 2, 1)], handling(steps, [crateStep("washer", 2)]), 1);
    expect(record.loads[0]).toMatchObject({ unloadedSeconds: 21, leftSeconds: 24 });
  });

  it("without a way back in the plan leave the lorry free when it is unloaded", () => {
    const record = day([load("lorry", 0, 3, 1)], handling(toHanging), 2);
    expect(record.loads[0]).toMatchObject({ unloadedSeconds: 3, leftSeconds: 3 });
  });

  it("of a finite fleet delay the next lorry until they are back full", () => {
    // Two crates in all, 100 s away. First lorry: washed at 12 and 22, back at 122; the second, due at 10, comes then: its
    // crates are emptied at 124 and 126, washed at 134 and 144.
    const loads = [load("first", 0, 2, 1), load("second", 10, 2, 1)];
    const fleet = { crates: 2, awaySeconds: 100 };
    const record = day(loads, handling(toHanging, [crateStep("washer", 10)], { fleet }), 2);
    expect(record.loads.map((each) => [each.dueSeconds, each.arrivedSeconds, each.leftSeconds])).toEqual([
      [0, 0, 22],
      [10, 122, 144],
    ]);
    expect(record.timeInSystem.max).toBe(6);
    expect(record.finishSeconds).toBe(144);
  });

  it("of a fleet large enough delay nobody", () => {
    const loads = [load("first", 0, 2, 1), load("second", 10, 2, 1)];
    const fleet = { crates: 4, awaySeconds: 100 };
    const record = day(loads, handling(toHanging, [crateStep("washer", 10)], { fleet }), 2);
    expect(record.loads.map((each) => each.arrivedSeconds)).toEqual([0, 10]);
  });

  it("wait while the washer's filter is changed, which is a breakdown of it", () => {
    // Empty at 2, 4, 6. After 15 s of washing the filter takes 5 s: 2-12, 12-17 and 22-27, 27-37.
    const washer = crateStep("washer", 10, { breakdowns: [breakdown(15, 5, { name: "filter change" })] });
    const record = day([load("lorry", 0, 3, 1)], handling(toHanging, [washer]), 2);
    expect(record.loads[0]!.leftSeconds).toBe(37);
    expect(secondsIn(record, "washer")).toMatchObject({ working: 30, down: 5 });
  });
});

describe("the automatic way, pallets and levels", () => {
  it("takes crates round in its batches", () => {
    // Off the lorry at 2, 4, 6, 8. Levels of two in 5 s: the first alone 2-7, two 7-12, the last 12-17: heads at 7, 12, 13,
    // 17. Washer 3 s: 10, 15, 18, 21. Restacking, up to two in 4 s: 10-14, 15-19, 19-23, 23-27, one each. Pallets out, up to
    // four in 10 s: 14-24, two 24-34, the last 34-44.
    const record = day(
      [load("lorry", 0, 4, 1)],
      handling(
        [crateStep("pallet feed", 2), crateStep("destacking", 5, { cratesPerCycle: 2 })],
        [
          crateStep("washer", 3),
          crateStep("restacking", 4, { cratesPerCycle: 2 }),
          crateStep("pallets out", 10, { cratesPerCycle: 4 }),
        ],
        { way: "automatic", cratesAtHanging: 2 },
      ),
      1,
    );
    expect(passes(record, "hanging", "start")).toEqual([7, 12, 13, 17]);
    expect(secondsIn(record, "restacking").working).toBe(16);
    expect(secondsIn(record, "pallets out").working).toBe(30);
    expect(record.loads[0]!.leftSeconds).toBe(44);
    expect(record.stages.filter((stage) => stage.kind === "crates").map((stage) => stage.processed)).toEqual(
      Array(5).fill(4),
    );
  });
});

describe("the hand-slid way and the lift", () => {
  const crews = [crew("yard", 1)];
  const byYard = { crews: ["yard"], peoplePerPosition: 1 };

  it("hand-slid: one person unloads, slides and hoses, the step furthest down the way first", () => {
    // Stage order: unloading, sliding, hosing (the way back counts as further on). Unload crate 1 0-4, slide 4-6; its head is
    // hung at 6: hose 6-9; unload 9-13, slide 13-15, hung, hose 15-18.
    const plan = planOf({ kind: "loads", loads: [load("lorry", 0, 2, 1)] }, [station("hanging", 1)], {
      crews,
      liveHandling: handling(
        [crateStep("unloading", 4, byYard), crateStep("sliding", 2, byYard)],
        [crateStep("hosing", 3, byYard)],
        { way: "hand-slid" },
      ),
    });
    const record = runChecked(plan);
    expect(passes(record, "hanging", "start")).toEqual([6, 15]);
    expect(record.loads[0]).toMatchObject({ unloadedSeconds: 13, leftSeconds: 18 });
    expect(record.crews[0]!.busySeconds).toBe(18);
  });

  it("lift: stacks of three off the lorry, one crate at a time presented, an in-line washer", () => {
    // A stack at 6; the lift presents a crate every 2 s when the last is empty: 8, 10, 12. Two heads a crate, 1 s each:
    // hung at 8, 9, 10, 11, 12, 13. Crates empty at 9, 11, 13; washed by 12, 15, 18.
    const plan = planOf({ kind: "loads", loads: [load("lorry", 0, 3, 2)] }, [station("hanging", 1)], {
      crews,
      liveHandling: handling(
        [crateStep("unloading", 6, { ...byYard, cratesPerCycle: 3 }), crateStep("crate lift", 2)],
        [crateStep("washer", 3)],
      ),
    });
    const record = runChecked(plan);
    expect(passes(record, "hanging", "start")).toEqual([8, 9, 10, 11, 12, 13]);
    expect(record.loads[0]).toMatchObject({ unloadedSeconds: 6, emptiedSeconds: 13, leftSeconds: 18 });
    expect(record.crews[0]!.busySeconds).toBe(6);
  });
});

describe("closing by the clock", () => {
  it("leaves full crates in lairage, and the day ends when the last emptied one is clean", () => {
    // Hanging at 2, 4, 6, 8, ...; none after 7: three heads. Washer 10 s: 12, 22, 32. The lorry waits with three of six.
    const plan = planOf({ kind: "loads", loads: [load("lorry", 0, 6, 1)] }, [station("hanging", 2)], {
      liveHandling: handling([crateStep("unloading", 1), crateStep("feeding", 1)], [crateStep("washer", 10)]),
    });
    const record = runChecked({ ...plan, day: { ...plan.day, closing: { rule: "stop hanging", atSeconds: 7 } } });
    expect(record.heads).toMatchObject({ hung: 3, inLairage: 3, onLine: 0 });
    expect(record.loads[0]!.leftSeconds).toBeNull();
    expect(record.finishSeconds).toBe(32);
    expect(record.status).toBe("finished");
  });
});
