import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { handling, load } from "../../../support/loads.ts";
import {
  chain,
  constant,
  crateStep,
  crew,
  dwell,
  manual,
  onChain,
  pause,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

// Each of these stopped the day for ever or gave a wrong figure once.
const named = (day: ReturnType<typeof runChecked>, name: string) => day.stages.find((stage) => stage.name === name)!;
const trimTo = (next: string) => station("trim", 3, { offLine: true, next, buffer: Infinity });

describe("chains", () => {
  it("a chain lets one head after another pass, also when the pool gives them the same row", () => {
    const day = runChecked(
      planOf(stream(constant(100), 3), [station("a", 1), chain("c", 3, 2, []), station("last", 1)]),
    );
    expect(passes(day, "c", "exit")).toEqual([106, 206, 306]);
  });
  it("a chain of one shackle loads and unloads at the same point", () => {
    const day = runChecked(
      planOf(stream(constant(1), 3), [station("a", 1, { buffer: 9 }), chain("c", 1, 2, []), station("last", 1)]),
    );
    expect(passes(day, "c", "exit")).toEqual([4, 6, 8]);
  });
  it("a head that a broken machine sent to trim is not sent there again by a chain that finishes it", () => {
    const lost = breakdown(6, 3, { headInHand: { to: "trim" } });
    const c = chain("c", 4, 2, [onChain("w", 0, 3, 1, { ifUnfinished: "pass" })], { unfinishedTo: "trim" });
    const day = runChecked(
      planOf(stream(constant(20), 2), [station("a", 4, { breakdowns: [lost] }), c, station("last", 1), trimTo("c")]),
    );
    expect(named(day, "trim").processed).toBe(1);
  });
  it("a head on its second ride is worked on again", () => {
    const line = [
      station("a", 1),
      chain("c", 4, 2, [onChain("w", 0, 1, 50)]),
      station("last", 1, { diversions: [{ to: "trim", share: 1 }] }),
      trimTo("c"),
    ];
    expect(named(runChecked(planOf(stream(constant(300), 1), line)), "w").processed).toBe(2);
  });
  it("a shackle that comes back during a step is there from the next one on, and no later head overtakes", () => {
    const line = [
      station("a", 1, { positions: 2 }),
      chain("c", 2, 4, [], { shackles: { count: 1, backSeconds: 22.5 } }),
      station("last", 1),
    ];
    expect(passes(runChecked(planOf(stream(constant(14), 3), line)), "c", "entry").slice(0, 2)).toEqual([15, 44]);
  });
  it("a finished head at the unloading point is taken off while a window holds the chain", () => {
    const line = [station("hang", 1), chain("c", 4, 2, [onChain("w", 1, 2, 4)]), station("last", 1)];
    expect(passes(runChecked(planOf(stream(constant(2), 2), line)), "c", "exit")).toEqual([10, 14]);
  });
});

describe("safe stops", () => {
  const line = (crews: string[]) => [
    manual("stun", 2, "", { crews, buffer: Infinity }),
    dwell("bleed", 60, 20),
    station("last", 1),
  ];
  const shift = (name: string, fromSeconds: number, toSeconds: number) => ({ name, fromSeconds, toSeconds });
  const safeStop = { from: "stun", to: "bleed" };
  it("a shift that begins before the stretch was empty calls off the end of the one before", () => {
    const plan = withDay(planOf(stream(constant(10), 30), line(["kill"]), { crews: [crew("kill", [1, 1])] }), {
      safeStop,
      shifts: [shift("a", 0, 100), shift("b", 105, 4000)],
    });
    expect(runChecked(plan).heads.out.carcass).toBe(30);
  });
  it("a crew may hand over to another on the stretch, whatever the order of the crews", () => {
    const crews = [crew("late", [0, 1]), crew("early", [1, 0])];
    const plan = withDay(planOf(stream(constant(10), 30), line(["early", "late"]), { crews }), {
      safeStop,
      shifts: [shift("a", 0, 100), shift("b", 100, 4000)],
    });
    expect(runChecked(plan).heads.out.carcass).toBe(30);
  });
  it("a stretch that ends at a window is over for a head that passes it unfinished", () => {
    const c = chain("c", 6, 2, [onChain("stick", 0, 1, 3, { ifUnfinished: "pass" })], { unfinishedTo: "trim" });
    const stages = [
      manual("stun", 1, "x"),
      c,
      dwell("late", 100, 99),
      station("last", 1, { buffer: 9 }),
      station("trim", 200, { offLine: true, next: "last", buffer: Infinity }),
    ];
    const plan = withDay(planOf(stream(constant(10), 8), stages, { crews: [crew("x", 1)] }), {
      safeStop: { from: "stun", to: "stick" },
      breaks: [pause("tea", 35, 10, { crews: ["x"] })],
    });
    expect(passes(runChecked(plan), "stun", "start")[3]!).toBeLessThan(60);
  });
});

describe("gates", () => {
  it("a head that comes back to the gate's first stage is counted once", () => {
    const stages = [
      station("hang", 1),
      station("a", 1, { buffer: 9 }),
      station("b", 1, { diversions: [{ to: "trim", share: 1 }] }),
      station("last", 1),
      trimTo("a"),
    ];
    const gates = [{ name: "g", from: "a", to: { stage: "last", moment: "start" as const }, atMost: 2 }];
    expect(runChecked(planOf(stream(constant(100), 3), stages, { gates })).heads.out.carcass).toBe(3);
  });
  it("heads are held only while the gate is closed, not while nobody is free", () => {
    const gates = [{ name: "g", from: "a", to: { stage: "c", moment: "start" as const }, atMost: 1 }];
    const stages = [manual("a", 2, "x", { buffer: 9 }), station("b", 3), manual("c", 5, "x")];
    expect(
      runChecked(planOf(stream(constant(1), 2), stages, { crews: [crew("x", 1)], gates })).stages[0]!.heldSeconds,
    ).toBe(3);
  });
});

describe("crews and failures", () => {
  it("the relief is called only when the crew listed first has nobody", () => {
    const line = [manual("a", 4, "own", { crews: ["own", "relief"] })];
    const day = runChecked(planOf(saturated(10), line, { crews: [crew("own", 1), crew("relief", 1)] }));
    expect(day.crews.map((each) => each.busySeconds)).toEqual([40, 0]);
  });
  it("the relief is not called for the next head in a window when the crew has just given one up", () => {
    // Steps of 2 s, a window of two shackles, work of 5 s: every head passes unfinished while the next one waits behind it.
    const c = chain(
      "c",
      3,
      2,
      [onChain("w", 0, 2, 5, { ifUnfinished: "pass", crews: ["own", "relief"], peoplePerPosition: 1 })],
      {
        unfinishedTo: "trim",
      },
    );
    const crews = [crew("own", 1), crew("relief", 1)];
    const line = [station("hang", 1), c, station("last", 0.1, { buffer: Infinity }), trimTo("last")];
    const day = runChecked(planOf(saturated(5), line, { crews }));
    expect(day.crews[0]!.busySeconds).toBeGreaterThan(8);
    expect(day.crews[1]!.busySeconds).toBe(0);
  });

  it("people who are not there today do not save the others a walk", () => {
    const plan = planOf(stream(constant(100), 1), [manual("a", 1, "x"), manual("b", 1, "x")], {
      crews: [crew("x", [1, 3], { walkSeconds: 5 })],
    });
    const shifts = [
      { name: "a", fromSeconds: 0, toSeconds: 1000 },
      { name: "b", fromSeconds: 1000, toSeconds: 4000 },
    ];
    expect(passes(runChecked(withDay(plan, { shifts })), "b", "end")).toEqual([107]);
  });
  it("a stop of the whole station loses only the heads in hand when it struck", () => {
    const lost = breakdown(6, 10, { scope: "station", headInHand: { to: "trim" } });
    const line = [
      manual("a", 4, "x", { positions: 2, breakdowns: [lost] }),
      station("last", 1, { buffer: 99 }),
      trimTo("last"),
    ];
    expect(named(runChecked(planOf(saturated(3), line, { crews: [crew("x", 1)] })), "a").unfinished).toBe(1);
  });
  it("an operator who is the only repairer repairs his own machine", () => {
    const line = [manual("a", 4, "x", { breakdowns: [breakdown(6, 3, { crew: "x" })] })];
    expect(runChecked(planOf(stream(constant(10), 3), line, { crews: [crew("x", 1)] })).status).toBe("finished");
  });
});

describe("vessels, removals, crates, closing", () => {
  const byProducts = [{ name: "blood", share: 0.4, of: "live weight" as const, vessel: "tank" }];
  const tank = (capacityKg: number, emptyAtKg: number, emptyingSeconds: number) => ({
    name: "tank",
    capacityKg,
    emptyAtKg,
    emptyingSeconds,
    crew: null,
    whenFull: "stop" as const,
  });
  it("a vessel that is still full after an emptying goes on stopping its stages and is emptied again", () => {
    const day = runChecked(
      planOf(saturated(8), [station("a", 4, { positions: 4, byProducts })], { vessels: [tank(2, 0.5, 10)] }),
    );
    expect(passes(day, "a", "start").filter((start) => start === 14)).toEqual([]);
  });
  it("a full vessel stops a dwell stage that feeds it", () => {
    const line = [station("a", 1), dwell("bleed", 5, 1, { byProducts }), station("last", 1)];
    expect(
      runChecked(planOf(stream(constant(10), 6), line, { vessels: [tank(2, 2, 500)] })).vessels[0]!.maxKg,
    ).toBeLessThanOrEqual(3);
  });
  it("heads that pass unworked are not removed by the share of those worked on", () => {
    const line = [
      station("a", 1, { weights: { fromKg: 3, toKg: 4, else: "trim" }, removals: [{ as: "condemned", share: 1 }] }),
      station("last", 1),
      trimTo("last"),
    ];
    expect(runChecked(planOf(stream(constant(10), 3), line)).heads.out).toEqual({ carcass: 3, condemned: 0 });
  });
  it("crates that come off a pallet at one instant are taken together", () => {
    const steps = [crateStep("pallet", 10, { cratesPerCycle: 4 }), crateStep("destacking", 4, { cratesPerCycle: 2 })];
    const plan = planOf({ kind: "loads", loads: [load("lorry", 0, 4, 1)] }, [station("hanging", 1)], {
      liveHandling: handling(steps, [], { cratesAtHanging: 2 }),
    });
    expect(passes(runChecked(plan), "hanging", "start")).toEqual([14, 15, 18, 19]);
  });
  it("no head of a stream is hung after the end of hanging", () => {
    const plan = planOf(stream(constant(5), 10), [station("hang", 4, { buffer: 9 }), station("b", 20, { buffer: 9 })]);
    const day = runChecked(withDay(plan, { closing: { rule: "stop hanging", atSeconds: 12 } }));
    expect(passes(day, "hang", "start").filter((start) => start > 12)).toEqual([]);
  });
});
