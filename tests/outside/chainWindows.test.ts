import { describe, it } from "vitest";
import type { ChainStation } from "../../sim/asked/plan/plan.ts";
import { Sampler, uniformStream, type Varying } from "../../sim/maths/random/index.ts";
import { OutsideChecks } from "../support/outsideChecks.ts";
import { chain, onChain, planOf, saturated, station } from "../support/plans.ts";
import { passes, runChecked } from "../support/timeline.ts";
import { CHAIN_WINDOWS } from "./register/chainWindows.ts";

const checks = new OutsideChecks(CHAIN_WINDOWS);

/** Hanging is twice as fast as the chain, so every shackle is taken. */
function fullChain(places: number, seconds: number, stations: ChainStation[], heads: number) {
  const line = [
    station("hanging", seconds / 2),
    chain("chain", places, seconds, stations, { unfinishedTo: "trim" }),
    station("last", 0.001, { buffer: Infinity }),
    station("trim", 0.001, { buffer: Infinity, offLine: true, next: "last" }),
  ];
  return runChecked(planOf(saturated(heads), line));
}

describe("a full chain", () => {
  it(checks.title("C.1"), () => {
    for (const [places, seconds] of [
      [10, 4],
      [25, 3],
      [1, 5],
    ] as const) {
      const day = fullChain(places, seconds, [], 100);
      const on = passes(day, "chain", "entry");
      const off = passes(day, "chain", "exit");
      checks.exact("C.1", `pace ${places}`, (off[90]! - off[40]!) / 50, seconds, 1e-12);
      // It is hung during a step and rides from the step's end on.
      checks.exact(
        "C.1",
        `ride ${places}`,
        off[60]! - Math.ceil(on[60]! / seconds + 1e-9) * seconds,
        (places - 1) * seconds,
        1e-9,
      );
    }
  });

  it(checks.title("C.2"), () => {
    for (const [cycle, positions, window] of [
      [2, 1, 1],
      [3.9, 1, 1],
      [6, 1, 1],
      [6, 1, 3],
      [7, 2, 2],
      [9, 2, 4],
      [11.5, 3, 5],
      [13, 4, 4],
    ] as const) {
      const day = fullChain(12, 4, [onChain("work", 2, window, cycle, { positions })], 400);
      const off = passes(day, "chain", "exit");
      checks.exact(
        "C.2",
        `${cycle} s at ${positions}`,
        (off[380]! - off[140]!) / 240,
        Math.max(4, cycle / positions),
        1e-9,
      );
    }
  });

  it(checks.title("C.3"), () => {
    const times: Varying[] = [
      { family: "constant", value: 3 },
      { family: "uniform", min: 2, max: 8 },
      { family: "exponential", mean: 4 },
    ];
    for (const [index, cycleSeconds] of times.entries()) {
      for (const window of [1, 2, 3, 5, 8]) {
        const stations = [onChain("work", 1, window, cycleSeconds, { ifUnfinished: "pass" })];
        const day = fullChain(14, 4, stations, 300);
        const entry = passes(day, "work", "entry")
          .filter((time) => !Number.isNaN(time))
          .slice(0, 280);
        const sampler = new Sampler(cycleSeconds, uniformStream("test", 0, "work", "work"));
        const finished = onePersonInWindow(entry, window * 4, sampler);
        const ends = passes(day, "work", "end").slice(0, 280);
        const same = finished.filter(
          (end, head) => Math.abs(end - ends[head]!) < 1e-9 || Number.isNaN(end + ends[head]!),
        );
        checks.exact("C.3", `heads that agree, ${index}, window ${window}`, same.length, 280, 0);
        checks.exact("C.3", `unfinished, ${index}, window ${window}`, count(ends), count(finished), 0);
      }
    }
  });
});

const count = (ends: readonly number[]) => ends.filter(Number.isNaN).length;

/** One person: begins when the head is there and the person free, draws its time then, gives it up when it leaves the window. */
function onePersonInWindow(entry: readonly number[], seconds: number, work: Sampler): number[] {
  let free = 0;
  return entry.map((came) => {
    const start = Math.max(came, free);
    const leaves = came + seconds;
    if (start >= leaves) return Number.NaN;
    const end = start + work.draw();
    free = Math.min(end, leaves);
    return end <= leaves ? end : Number.NaN;
  });
}

checks.close();
