import { describe, expect, it } from "vitest";
import type { LiveHandling } from "../../../../sim/asked/plan/plan.ts";
import { load } from "../../../support/loads.ts";
import {
  constant,
  crateStep,
  crew,
  manual,
  pause,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

describe("a break", () => {
  it("lets the head in hand be finished, then nobody starts until it is over", () => {
    // 4 s a head: 0-4, 4-8, 8-12; the break of 20 s is due at 10: the third is finished at 12, the fourth starts at 32.
    const plan = withDay(planOf(saturated(5), [manual("a", 4, "crew")], { crews: [crew("crew", 1)] }), {
      breaks: [pause("tea", 10, 20, { crews: ["crew"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "a", "start").slice(0, 5)).toEqual([0, 4, 8, 32, 36]);
    expect(secondsIn(day, "a")).toEqual({ working: 20, "on break": 20 });
    // Present 0-12 (two seconds longer than planned) and 32-40.
    expect(day.crews[0]).toMatchObject({ busySeconds: 20, presentSeconds: 20 });
  });

  it("pauses the machines it names, without a crew", () => {
    const plan = withDay(planOf(saturated(3), [station("m", 4)]), { breaks: [pause("tea", 5, 10, { stages: ["m"] })] });
    expect(passes(runChecked(plan), "m", "start").slice(0, 3)).toEqual([0, 4, 15]);
  });

  it("leaves crews and machines that it does not name at work", () => {
    const line = [manual("a", 4, "first"), manual("b", 1, "second", { buffer: Infinity })];
    const plan = withDay(planOf(saturated(3), line, { crews: [crew("first", 1), crew("second", 1)] }), {
      breaks: [pause("tea", 4, 50, { crews: ["second"] })],
    });
    const day = runChecked(plan);
    expect(passes(day, "a", "end").slice(0, 3)).toEqual([4, 8, 12]);
    // People are sent when all that happens at an instant is over: at 4 the break has begun when the first head is there,
    // and nobody takes it in hand. Three heads wait.
    expect(passes(day, "b", "start").slice(0, 3)).toEqual([54, 55, 56]);
  });
});

describe("shifts", () => {
  it("change the number of people, and nobody works in a gap between them", () => {
    const line = [manual("a", 10, "crew", { positions: 3, buffer: Infinity })];
    const plan = withDay(planOf(stream(constant(1), 40), line, { crews: [crew("crew", [3, 1])] }), {
      shifts: [
        { name: "early", fromSeconds: 20, toSeconds: 35 },
        { name: "late", fromSeconds: 100, toSeconds: 120 },
      ],
    });
    const starts = passes(runChecked(plan), "a", "start");
    expect(starts.slice(0, 8)).toEqual([20, 20, 20, 30, 30, 30, 100, 110]);
  });

  it("end in overtime: the last shift's people stay until the line is clear", () => {
    const plan = withDay(
      planOf(stream(constant(1), 5), [manual("a", 10, "crew", { buffer: Infinity })], { crews: [crew("crew", 1)] }),
      {
        shifts: [{ name: "day", fromSeconds: 0, toSeconds: 15 }],
      },
    );
    const day = runChecked(plan);
    expect(day.finishSeconds).toBe(51);
    expect(day.shiftEndSeconds).toBe(15);
  });
});

const handling: LiveHandling = {
  way: "hand-slid",
  toHanging: [crateStep("unloading", 10), crateStep("crate sliding", 5, { places: 2 })],
  back: [],
  cratesAtHanging: 1,
  fleet: null,
};

describe("loads of crates", () => {
  it("are unloaded, wait in lairage, are fed to the hanging point and emptied head by head", () => {
    // Load at 100, 3 crates of 2. Crate 1: unloaded 110, fed 115; heads hung from 115, 3 s each: 115-118, 118-121.
    // Crate 2: unloaded 120, fed 120-125, hanging place free since 118 (head 2 was taken at 118): heads at 125, 128.
    // Crate 3: unloaded 130, fed 135; place free since 128: heads at 135, 138.
    const plan = planOf({ kind: "loads", loads: [load("first", 100, 3, 2)] }, [station("hanging", 3)], {
      liveHandling: handling,
    });
    const day = runChecked(plan);
    expect(passes(day, "hanging", "start")).toEqual([115, 118, 125, 128, 135, 138]);
    expect(day.loads[0]).toEqual({
      name: "first",
      heads: 6,
      crates: 3,
      dueSeconds: 100,
      arrivedSeconds: 100,
      unloadedSeconds: 130,
      emptiedSeconds: 138,
      washedSeconds: null,
      leftSeconds: 130,
    });
    expect(day.heads).toMatchObject({ arrived: 6, hung: 6, inLairage: 0, onLine: 0 });
    expect(day.finishSeconds).toBe(141);
  });

  it("stay on the lorry while the lairage is full", () => {
    // Hanging takes 100 s a head, one head a crate. Crate 1 is at the hanging point at 15 and gone at once; crate 2 is
    // there from 25 and taken at 115; crate 3 is fed at 35 and held by the feeder; 4 and 5 fill the two lairage places
    // (the feeder is their third) ... so crate 6 (unloaded by 60) cannot leave the lorry before 115.
    const plan = planOf({ kind: "loads", loads: [load("only", 0, 6, 1)] }, [station("hanging", 100)], {
      liveHandling: handling,
    });
    const day = runChecked(plan);
    expect(day.loads[0]!.unloadedSeconds).toBe(115);
    expect(day.lairage!.max).toBe(2);
  });

  it("come in the order of arrival when a late lorry is overtaken", () => {
    const loads = [load("late", 0, 1, 1, { delay: constant(500) }), load("on time", 100, 1, 1)];
    const day = runChecked(planOf({ kind: "loads", loads }, [station("hanging", 3)], { liveHandling: handling }));
    expect(day.loads.map((each) => each.emptiedSeconds)).toEqual([515, 115]);
    expect(Array.from(day.perHead!.loads)).toEqual([1, 0]);
  });

  it("may hold animals dead on arrival, which are taken off where they would be hung", () => {
    const loads = [load("hot day", 0, 2, 5, { deadOnArrivalShare: 1 })];
    const day = runChecked(
      planOf({ kind: "loads", loads }, [station("hanging", 3), station("b", 1)], { liveHandling: handling }),
    );
    expect(day.heads.out).toEqual({ carcass: 0, "dead on arrival": 10 });
    expect(day.stages.find((stage) => stage.name === "b")!.processed).toBe(0);
  });
});

describe("a fixed end of hanging", () => {
  it("clears the line and leaves the rest in lairage", () => {
    const plan = withDay(
      planOf({ kind: "loads", loads: [load("only", 0, 10, 2)] }, [station("hanging", 10), station("b", 4)], {
        liveHandling: handling,
      }),
      { closing: { rule: "stop hanging", atSeconds: 60 } },
    );
    const day = runChecked(plan);
    // Hanging starts at 15 and every 10 s: the head hung at 55 is the fifth and last; it leaves b at 69.
    expect(day.heads).toMatchObject({ hung: 5, onLine: 0, inLairage: 15 });
    expect(day.finishSeconds).toBe(69);
    expect(day.status).toBe("finished");
    expect(day.loads[0]!.emptiedSeconds).toBeNull();
  });

  it("on an empty line ends the day at once", () => {
    const plan = withDay(
      planOf({ kind: "loads", loads: [load("only", 0, 1, 1)] }, [station("hanging", 1)], { liveHandling: handling }),
      { closing: { rule: "stop hanging", atSeconds: 5 } },
    );
    expect(runChecked(plan).finishSeconds).toBe(5);
  });
});
