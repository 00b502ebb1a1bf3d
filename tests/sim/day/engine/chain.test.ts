import { describe, expect, it } from "vitest";
import type { ChainStation } from "../../../../sim/asked/plan/plan.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { chain, constant, crew, manual, onChain, pause, planOf, station, stream } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";
import { withDay } from "../../../support/withDay.ts";

// Worked by hand, in seconds. A chain of n places with a step of s takes a head hung right after a step n x s further:
// its steps are due at s, 2s, 3s, ... as long as nothing holds it, and a step goes before a head hung at the same instant.

const trim = station("trim", 3, { offLine: true, next: "last", buffer: Infinity });

describe("a chain", () => {
  it("takes a head at the loading point and lets it off at the end of the last step", () => {
    // Hung at 6, 11 and 16; steps at 2, 4, 6, ... Head 1: places 1, 2, 3 at 8, 10, 12, off at 14. Head 2 finds an empty
    // shackle at 11 that moves on at 12: 1, 2, 3 at 12, 14, 16, off at 18. Head 3 is hung after the step at 16: off at 24.
    const line = [station("hang", 1), chain("c", 4, 2, []), station("last", 1)];
    const day = runChecked(planOf(stream(constant(5), 3), line));
    expect(passes(day, "c", "entry")).toEqual([6, 11, 16]);
    expect(passes(day, "c", "exit")).toEqual([14, 18, 24]);
    expect(day.finishSeconds).toBe(25);
  });

  it("counts as gaps the shackles that leave the loading point empty between the first head and the last", () => {
    // As above: shackles leave at 8 (head 1), 10, 12 (head 2), 14, 16, 18 (head 3); those at 2, 4, 6 come before the first.
    const line = [station("hang", 1), chain("c", 4, 2, []), station("last", 1)];
    const day = runChecked(planOf(stream(constant(5), 3), line));
    expect(day.chains[0]).toMatchObject({ shackles: 6, gaps: 3, missingShackles: 0 });
  });

  it("works from the day's start on, whether or not it ever stands", () => {
    const day = runChecked(
      planOf(stream(constant(5), 3), [station("hang", 1), chain("c", 4, 2, []), station("last", 1)]),
    );
    expect(secondsIn(day, "c")).toEqual({ working: 25 });
  });

  it("has no more heads on it than shackles, and one head a step at most", () => {
    // Hanging takes no time worth naming: the hanger is blocked until the next empty shackle comes, at every step.
    const line = [station("hang", 0.5, { buffer: Infinity }), chain("c", 4, 2, []), station("last", 1)];
    const day = runChecked(planOf(stream(constant(0.5), 6), line));
    expect(passes(day, "c", "entry")).toEqual([1, 2, 4, 6, 8, 10]);
    expect(passes(day, "c", "exit")).toEqual([8, 10, 12, 14, 16, 18]);
    expect(day.chains[0]).toMatchObject({ shackles: 6, gaps: 0 });
    expect(day.stages.find((stage) => stage.name === "c")!.queue.max).toBe(4);
  });
});

describe("a station on a chain", () => {
  const run = (stations: ChainStation[], places = 4, every = 2, heads = 2) =>
    runChecked(
      planOf(stream(constant(every), heads), [
        station("hang", 1),
        chain("c", places, 2, stations, { unfinishedTo: "trim" }),
        station("last", 1, { buffer: Infinity }),
        trim,
      ]),
    );

  it("works on a head from the window's first place on, while the chain moves", () => {
    // Hung at 3: place 1 at 4, 2 at 6, 3 at 8, off at 10. The window is places 1 and 2: work 4-7, riding.
    const day = run([onChain("w", 1, 2, 3)], 4, 2, 1);
    expect(passes(day, "w", "entry")).toEqual([4]);
    expect(passes(day, "w", "start")).toEqual([4]);
    expect(passes(day, "w", "end")).toEqual([7]);
    expect(passes(day, "c", "exit")).toEqual([10]);
  });

  it("takes heads in its window first come, first served", () => {
    // Hung at 3 and 5, in the window from 4 and 6; one position of 3 s: 4-7, 7-10. Head 2 leaves the window at 10, done.
    const day = run([onChain("w", 1, 2, 3)]);
    expect(passes(day, "w", "start")).toEqual([4, 7]);
    expect(passes(day, "w", "end")).toEqual([7, 10]);
    expect(passes(day, "c", "exit")).toEqual([10, 12]);
    expect(day.chains[0]!.standSeconds.unfinished).toBe(0);
  });

  it("stops the chain until it has finished the head at the window's last place", () => {
    // 4 s each: 4-8 and 8-12. The step due at 10 waits for head 2 until 12. Five places: head 1 is at place 3 at 8, 4 at
    // 12, off at 14; head 2 at place 3 at 12, 4 at 14, off at 16.
    const day = run([onChain("w", 1, 2, 4)], 5);
    expect(passes(day, "w", "end")).toEqual([8, 12]);
    expect(passes(day, "c", "exit")).toEqual([14, 16]);
    expect(day.chains[0]!.standSeconds).toEqual({ down: 0, unfinished: 2, unloading: 0, pause: 0 });
    expect(secondsIn(day, "c")).toMatchObject({ blocked: 2 });
  });

  it("with two positions works on two heads of its window at once", () => {
    // As above, but head 2 is taken in hand at 6 already and is done at 10, when it has to leave the window.
    const day = run([onChain("w", 1, 2, 4, { positions: 2 })]);
    expect(passes(day, "w", "start")).toEqual([4, 6]);
    expect(passes(day, "w", "end")).toEqual([8, 10]);
    expect(passes(day, "c", "exit")).toEqual([10, 12]);
  });

  it("lets a head pass unfinished when its plan says so, and sends it to trim from the chain's end", () => {
    // Head 2 is in work from 8 on and has to leave the window at 10, 2 s short: broken off, off the chain at 12, trim
    // 12-15, then the last stage.
    const day = run([onChain("w", 1, 2, 4, { ifUnfinished: "pass" })]);
    expect(passes(day, "w", "end")).toEqual([8, Number.NaN]);
    expect(passes(day, "w", "exit")).toEqual([8, 10]);
    expect(passes(day, "c", "exit")).toEqual([10, 12]);
    expect(passes(day, "trim", "start")).toEqual([Number.NaN, 12]);
    expect(passes(day, "last", "start")).toEqual([10, 15]);
    expect(day.stages.find((stage) => stage.name === "w")).toMatchObject({ unfinished: 1, processed: 1 });
    expect(day.heads.out.carcass).toBe(2);
  });

  it("that passes heads takes the next one at the instant at which it had to let the last one go", () => {
    // 10 s of work cannot be done in a window of 4 s: head 1 is worked on 4-8, head 2 (there since 6) 8-10, neither done.
    const day = run([onChain("w", 1, 2, 10, { ifUnfinished: "pass" })]);
    expect(passes(day, "w", "start")).toEqual([4, 8]);
    expect(passes(day, "w", "exit")).toEqual([8, 10]);
    expect(secondsIn(day, "w").working).toBe(6);
    expect(day.stages.find((stage) => stage.name === "w")).toMatchObject({ unfinished: 2, processed: 0 });
    expect(passes(day, "trim", "start")).toEqual([10, 13]);
  });

  it("that stops the chain keeps the heads before it standing too", () => {
    // First station: place 0, 1 s (3-4, 5-6). Second: place 2, 5 s. Head 1 is there from 6: done 11, the step due at 8
    // waits until then. Head 2 is there from 11: done 16, the step due at 13 waits. Then 18, 20: off at 18 and 20.
    const day = run([onChain("v", 0, 1, 1), onChain("w", 2, 1, 5)], 5);
    expect(passes(day, "v", "end")).toEqual([4, 6]);
    expect(passes(day, "w", "start")).toEqual([6, 11]);
    expect(passes(day, "w", "end")).toEqual([11, 16]);
    expect(passes(day, "c", "exit")).toEqual([18, 20]);
    expect(day.chains[0]!.standSeconds.unfinished).toBe(6);
  });

  it("needs its crew like any other, and stops the chain while nobody is there", () => {
    // Nobody is there before 20: the head hung at 3 is at the window's last place from 6 on, the step due at 8 waits.
    // Work 20-23, step at 23 to place 3, off at 25.
    const line = [
      station("hang", 1),
      chain("c", 4, 2, [onChain("w", 1, 2, 3, { crews: ["dressers"], peoplePerPosition: 1 })]),
      station("last", 1),
    ];
    const plan = withDay(planOf(stream(constant(2), 1), line, { crews: [crew("dressers", 1)] }), {
      shifts: [{ name: "late", fromSeconds: 20, toSeconds: 3600 }],
    });
    const day = runChecked(plan);
    expect(passes(day, "w", "start")).toEqual([20]);
    expect(passes(day, "c", "exit")).toEqual([25]);
    expect(day.chains[0]!.standSeconds.unfinished).toBe(15);
  });
});

describe("a chain stands", () => {
  it("while any station on it is down; the step under way goes on afterwards with the time left", () => {
    // Hung at 5 and 9. Head 1: v 5-6, w from 6. w is down 8.5-13.5 with half a second of work and 1.5 s of the step left:
    // work ends at 14, the step at 15. Meanwhile head 2 is hung at 9 and v works on it 9-10. Steps at 15, 17, 19, 21.
    const stops = breakdown(8.5, 5, { clock: "calendar" });
    const line = [
      station("hang", 1),
      chain("c", 4, 2, [onChain("v", 0, 1, 1), onChain("w", 1, 2, 3, { breakdowns: [stops] })]),
      station("last", 1),
    ];
    const day = runChecked(planOf(stream(constant(4), 2), line));
    expect(passes(day, "v", "end")).toEqual([6, 10]);
    expect(passes(day, "w", "start")).toEqual([6, 15]);
    expect(passes(day, "w", "end")).toEqual([14, 18]);
    expect(passes(day, "c", "exit")).toEqual([17, 21]);
    expect(day.chains[0]!.standSeconds).toEqual({ down: 5, unfinished: 0, unloading: 0, pause: 0 });
    expect(secondsIn(day, "c")).toMatchObject({ down: 5 });
    expect(secondsIn(day, "w")).toMatchObject({ working: 6, down: 5 });
  });

  it("until the last of several stations is repaired", () => {
    // v is down 7-12, 19-24 and 31-36, w 9-19 and 28-38: the chain stands 7-24 and 28-38. Hung at 5, place 1 at 6; the step
    // due at 8 has one second left: 25; then 27; the one due at 29 has one second left: off at 39.
    const line = [
      station("hang", 1),
      chain("c", 4, 2, [
        onChain("v", 0, 1, 1, { breakdowns: [breakdown(7, 5, { clock: "calendar" })] }),
        onChain("w", 1, 1, 1, { breakdowns: [breakdown(9, 10, { clock: "calendar" })] }),
      ]),
      station("last", 1),
    ];
    const day = runChecked(planOf(stream(constant(4), 1), line));
    expect(passes(day, "w", "end")).toEqual([7]);
    expect(passes(day, "c", "exit")).toEqual([39]);
    expect(day.chains[0]!.standSeconds.down).toBe(27);
  });

  it("while the head at its end has nowhere to go", () => {
    // Two places, hung at 3, 5, 7. Packing takes 5 s and has no place to wait: 6-11, 11-16, 16-21. The step due at 8 waits
    // for the place until 11, the one due at 13 until 16.
    const line = [station("hang", 1), chain("c", 2, 2, []), station("pack", 5)];
    const day = runChecked(planOf(stream(constant(2), 3), line));
    expect(passes(day, "c", "exit")).toEqual([6, 11, 16]);
    expect(passes(day, "pack", "start")).toEqual([6, 11, 16]);
    expect(day.chains[0]!.standSeconds).toEqual({ down: 0, unfinished: 0, unloading: 6, pause: 0 });
  });

  it("in a planned pause, which interrupts a step; the stations on it work on", () => {
    // Hung at 3, place 1 at 4, 2 at 6. Pause 7-17 with one second of the step left: place 3 at 18, off at 20. Work 4-9.
    const line = [station("hang", 1), chain("c", 4, 2, [onChain("w", 1, 2, 5)]), station("last", 1)];
    const plan = withDay(planOf(stream(constant(2), 1), line), { breaks: [pause("tea", 7, 10, { stages: ["c"] })] });
    const day = runChecked(plan);
    expect(passes(day, "w", "end")).toEqual([9]);
    expect(passes(day, "c", "exit")).toEqual([20]);
    expect(day.chains[0]!.standSeconds.pause).toBe(10);
    expect(secondsIn(day, "c")["on break"]).toBe(10);
  });
});

describe("detachable shackles", () => {
  it("are free again when they are back, and until then no head is hung", () => {
    // One shackle, 6 s of way back, two places. Head 1: on 2, off 6, shackle back at 12: head 2 on 12, off 16, back 22.
    const line = [
      station("hang", 1, { buffer: Infinity }),
      chain("c", 2, 2, [], { shackles: { count: 1, backSeconds: 6 } }),
      station("last", 1),
    ];
    const day = runChecked(planOf(stream(constant(1), 3), line));
    expect(passes(day, "c", "entry")).toEqual([2, 12, 22]);
    expect(passes(day, "c", "exit")).toEqual([6, 16, 26]);
    // Heads leave the loading point at 4, 14 and 24, eight empty places between them.
    expect(day.chains[0]).toMatchObject({ shackles: 11, gaps: 8 });
  });

  it("never missing, leave the chain as it would be with shackles of its own", () => {
    const line = (shackles: { count: number; backSeconds: number } | null) => [
      station("hang", 1, { buffer: Infinity }),
      chain("c", 4, 2, [], { shackles }),
      station("last", 1),
    ];
    const closed = runChecked(planOf(stream(constant(1), 12), line(null)));
    const open = runChecked(planOf(stream(constant(1), 12), line({ count: 8, backSeconds: 7 })));
    expect(passes(open, "c", "exit")).toEqual(passes(closed, "c", "exit"));
    expect(open.chains[0]!.missingShackles).toBe(0);
  });
});

describe("two chains", () => {
  it("are joined by somebody who hangs heads over from one to the other", () => {
    // First chain: 2 places of 2 s, heads on at 5, 9, 13, off at 8, 12, 16. Rehanging 3 s: 8-11, 12-15, 16-19. Second
    // chain: 2 places of 3 s, steps at 3, 6, 9, ...: on at 11 (moves at 12), off at 15; on at 15 after the step, 18, off
    // at 21; on at 19 (moves at 21), off at 24.
    const line = [
      station("hang", 1),
      chain("first", 2, 2, []),
      manual("rehang", 3, "crew"),
      chain("second", 2, 3, []),
      station("last", 1),
    ];
    const day = runChecked(planOf(stream(constant(4), 3), line, { crews: [crew("crew", 1)] }));
    expect(passes(day, "first", "exit")).toEqual([8, 12, 16]);
    expect(passes(day, "rehang", "end")).toEqual([11, 15, 19]);
    expect(passes(day, "second", "entry")).toEqual([11, 15, 19]);
    expect(passes(day, "second", "exit")).toEqual([15, 21, 24]);
    expect(day.crews[0]!.busySeconds).toBe(9);
  });
});
