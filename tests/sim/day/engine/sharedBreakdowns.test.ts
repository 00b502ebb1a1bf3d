import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { handling, load } from "../../../support/loads.ts";
import {
  chain,
  constant,
  crateStep,
  crew,
  onChain,
  planOf,
  saturated,
  station,
  stream,
} from "../../../support/plans.ts";
import { shared } from "../../../support/sharedBreakdowns.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

const TWO = [station("a", 4, { buffer: Infinity }), station("b", 6, { buffer: Infinity })];
const twoHeads = (sharedBreakdowns: ReturnType<typeof shared>[]) =>
  planOf(stream(constant(1), 2), TWO, { sharedBreakdowns });

describe("a breakdown that stops several stations", () => {
  it("runs while any of them works, stops and starts them all at once, and lets work go on with the time left", () => {
    // a: head 1 at 1-5, head 2 from 5 on; b: head 1 from 5 on. 7 s of running from 1 on: down 8-13. a ends at 14, b at 16.
    // b works on head 2 from 16 on; 7 s of running from 13 on: down 20-25. The last head is done at 27.
    const day = runChecked(twoHeads([shared(["a", "b"], 7, 5)]));
    expect(passes(day, "a", "end")).toEqual([5, 14]);
    expect(passes(day, "b", "end")).toEqual([16, 27]);
    expect(secondsIn(day, "a")).toEqual({ working: 8, starved: 9, down: 10 });
    expect(secondsIn(day, "b")).toEqual({ working: 12, starved: 5, down: 10 });
    expect(day.stages.map(({ stops }) => stops)).toEqual([2, 2]);
    expect(day.sharedBreakdowns).toEqual([{ name: "board", stages: ["a", "b"], stops: 2, downSeconds: 10 }]);
  });

  it("runs only while all of them work, where the plan says so", () => {
    // Both work from 5 on: 3 s are over at 8. Later a has nothing to do any more, and b works on undisturbed.
    const day = runChecked(twoHeads([shared(["a", "b"], 3, 5, { clock: "all running" })]));
    expect(passes(day, "b", "end")).toEqual([16, 22]);
    expect(day.sharedBreakdowns[0]).toMatchObject({ stops: 1, downSeconds: 5 });
  });

  it("goes by the clock, where the plan says so, and keeps idle stations from beginning", () => {
    // Down 0.5-2.5 and from 2.5 + 0.5 on: head 1 comes at 1 and begins at 2.5, has 3.5 s left at 3, and so on.
    const day = runChecked(
      planOf(stream(constant(1), 1), TWO, { sharedBreakdowns: [shared(["a", "b"], 3.5, 2, { clock: "calendar" })] }),
    );
    // Up 0-3.5, down to 5.5, up to 9, down to 11, up to 14.5. a: 1-3.5, 5.5-7; b: 7-9, 11-14.5, down to 16.5, 17.
    expect(passes(day, "a", "end")).toEqual([7]);
    expect(passes(day, "b", "end")).toEqual([17]);
  });

  it("leaves alone what it does not name", () => {
    const day = runChecked(planOf(stream(constant(1), 2), TWO, { sharedBreakdowns: [shared(["b"], 2, 5)] }));
    expect(passes(day, "a", "end")).toEqual([5, 9]);
    expect(day.stages.map(({ stops }) => stops)).toEqual([0, 5]);
  });

  it("overlaps with a station's own repair, which goes on meanwhile", () => {
    // Own repair 3-13, the shared one 8-28: work goes on at 28 with 2 s left.
    const line = [station("a", 5, { breakdowns: [breakdown(3, 10)] }), station("b", 1)];
    const day = runChecked(
      planOf(saturated(1), line, { sharedBreakdowns: [shared(["a", "b"], 8, 20, { clock: "calendar" })] }),
    );
    expect(passes(day, "a", "end")[0]).toBe(30);
  });

  it("strikes where it is due when another one that stopped the same stations is over", () => {
    const two = [shared(["a", "b"], 2, 4), shared(["a", "b"], 2, 3, { name: "air" })];
    const day = runChecked(planOf(stream(constant(1), 1), TWO, { sharedBreakdowns: two }));
    // Both are due at 3: board 3-7, then air, whose clock stood with nothing left, 7-10; so after every 2 s of running. a ends at
    // 12; b works 19-21, 28-30 and 37-39.
    expect(passes(day, "a", "end")).toEqual([12]);
    expect(passes(day, "b", "end")).toEqual([39]);
    expect(day.sharedBreakdowns.map(({ downSeconds, stops }) => [stops, downSeconds])).toEqual([
      [4, 16],
      [4, 12],
    ]);
  });

  it("stops a chain that it names, and with a station on a chain the chain", () => {
    // Up 0-4.5: the step due at 5 has 0.5 s left and is made at 7; all that follows is 2 s later.
    const line = (stops: string[]) =>
      planOf(
        stream(constant(1), 1),
        [station("hang", 1), chain("rail", 6, 1, [onChain("wash", 1, 2, 1.5)]), station("press", 1)],
        {
          sharedBreakdowns: [shared(stops, 4.5, 2, { clock: "calendar" })],
          day: { ...planOf(saturated(1), []).day, ceilingSeconds: 11 },
        },
      );
    const plain = passes(runChecked(line(["press"])), "rail", "exit")[0]!;
    for (const stops of [
      ["rail", "press"],
      ["wash", "press"],
      ["rail", "wash", "press"],
    ]) {
      const day = runChecked(line(stops));
      expect(passes(day, "rail", "exit")[0]).toBe(plain + 2);
      expect(day.chains[0]!.standSeconds.down).toBeGreaterThanOrEqual(2);
    }
  });

  it("counts a chain as running while it moves", () => {
    // The chain moves from 0 on, so the uptime is over at 3 although the press never worked.
    const line = [station("hang", 10), chain("rail", 3, 1, []), station("press", 1)];
    const day = runChecked(
      planOf(stream(constant(1), 1), line, { sharedBreakdowns: [shared(["rail", "press"], 3, 5)] }),
    );
    // Down 3-8: hanging ends at 11, and is not concerned; up 8-11, down 11-16.
    expect(day.sharedBreakdowns[0]!.stops).toBeGreaterThanOrEqual(2);
    expect(day.chains[0]!.standSeconds.down).toBe(day.sharedBreakdowns[0]!.downSeconds);
    expect(passes(day, "hang", "end")).toEqual([11]);
  });

  it("stops crate steps by the names that results give them", () => {
    const plan = planOf({ kind: "loads", loads: [load("early", 0, 2, 1)] }, [station("hang", 1)], {
      liveHandling: handling([crateStep("unloading", 4), crateStep("crate lift", 2)]),
      sharedBreakdowns: [shared(["unloading", "hang"], 3, 10)],
    });
    const day = runChecked(plan);
    // Unloading 0-3, down 3-13, 13-14 and on to 16, when the first crate has come by the lift: down 16-26. Hanging 26-27, unloading
    // 26-28, lift 28-30, hanging 30-31.
    expect(passes(day, "hang", "end")).toEqual([27, 31]);
    expect(day.stages.find(({ name }) => name === "unloading")!.stops).toBe(2);
  });
});

describe("what the end of the day is owed to", () => {
  const parts = (plan: Parameters<typeof runChecked>[0]) =>
    Object.fromEntries(
      runChecked(plan, { binding: true }).binding!.day.map(({ cause, stage, detail, seconds }) => [
        [cause, stage, detail].filter((word) => word).join(" "),
        seconds,
      ]),
    );

  it("names the shared breakdown and no stage for the time that all stood", () => {
    // As above: 1 s until head 1 comes, a 4 s, b 6 + 6 s, and twice 5 s of standing.
    const bound = parts(twoHeads([shared(["a", "b"], 7, 5)]));
    expect(bound).toEqual({ "work a": 4, "work b": 12, "shared breakdown board": 10, arrivals: 1 });
  });

  it("tells the wait for somebody who repairs apart", () => {
    const two = [
      shared(["a"], 6, 10, { name: "early", crew: "fitters", clock: "calendar" }),
      shared(["b"], 6.5, 3, { name: "late", crew: "fitters", clock: "calendar" }),
    ];
    const plan = planOf(stream(constant(1), 1), [station("a", 4), station("b", 6)], {
      sharedBreakdowns: two,
      crews: [crew("fitters", 1)],
    });
    expect(runChecked(plan).sharedBreakdowns[1]).toMatchObject({ stops: 1, downSeconds: 12.5 });
    const bound = parts(plan);
    // a 1-5, b 5-6.5, then 9.5 s until the fitter comes at 16, 3 s of repair, 19-23.5; early strikes again at 22, late at 25.5.
    expect(bound).toEqual({
      "work a": 4,
      "work b": 6,
      "shared breakdown late": 3,
      "shared repairer late": 9.5,
      arrivals: 1,
    });
  });

  it("owes the wait of an idle station to it as well", () => {
    // Down from 3.5 to 9.5: head 1 comes at 5 and begins at 9.5.
    const day = parts(
      planOf(stream(constant(5), 1), [station("a", 4)], {
        sharedBreakdowns: [shared(["a"], 3.5, 6, { clock: "calendar" })],
      }),
    );
    expect(day["shared breakdown board"]).toBeCloseTo(4.5 + 6, 9);
    expect(day.arrivals).toBe(5);
  });
});
