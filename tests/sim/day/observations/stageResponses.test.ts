import { expect, it } from "vitest";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("gives state shares of the own time, on break left out and beside it", () => {
  // Skinning: 15 600 s between its first head and its last, 14 700 s of them its own time.
  expect(values).toMatchObject({
    "working.skinning": 9000 / 14_700,
    "blocked.skinning": 1800 / 14_700,
    "starved.skinning": 1200 / 14_700,
    "noCrew.skinning": 900 / 14_700,
    "down.skinning": 1800 / 14_700,
    "onBreak.skinning": 900 / 15_600,
    "working.chilling": 0.9,
    "working.unloading": 0.75,
    "stops.skinning": 3,
  });
});

it("gives state shares of the day by the clock, which add up to one", () => {
  expect(values).toMatchObject({
    "working.skinning.byClock": 0.5,
    "blocked.skinning.byClock": 0.1,
    "starved.skinning.byClock": 0.2,
    "noCrew.skinning.byClock": 0.05,
    "down.skinning.byClock": 0.1,
    "onBreak.skinning.byClock": 0.05,
    "working.chilling.byClock": 0.75,
    "working.unloading.byClock": 0.5,
  });
});

it("has no share, rather than 0, of a station that no head could reach or that was on break throughout", () => {
  const day = handMadeDay();
  const skinning = day.stages.find(({ name }) => name === "skinning")!;
  skinning.ownTime = null;
  expect(measure(day, HAND_MADE_PLAN)).toMatchObject({ "working.skinning": null, "onBreak.skinning": null });
  skinning.ownTime = { fromSeconds: 0, toSeconds: 100, stateSeconds: [0, 0, 0, 0, 0, 200] };
  expect(measure(day, HAND_MADE_PLAN)).toMatchObject({ "working.skinning": null, "onBreak.skinning": 1 });
});

it("says with every share what it is taken over", () => {
  for (const { key, meaning } of responsesOf(HAND_MADE_PLAN)) {
    if (/^(working|blocked|starved|noCrew|down|onBreak)\./.test(key)) {
      expect(meaning, key).toMatch(
        key.endsWith(".byClock") ? /^By the clock: / : /from a station's first head to its last/,
      );
    }
  }
});

it("reads queues of heads, of crates and heads present in a dwell stage", () => {
  expect(values).toMatchObject({
    "queue.skinning.mean": 2.5,
    "queue.skinning.max": 5,
    "queue.crate feeding.max": 40,
    "queue.chilling.mean": 61,
  });
});

it("reads heads on a chain, and states of the stations on it, which have no queue", () => {
  const keys = Object.keys(measure(wholeDay(), WHOLE_PLAN));
  expect(keys).toContain("queue.evisceration chain.mean");
  expect(keys).toContain("working.evisceration");
  expect(keys).not.toContain("working.evisceration chain");
  expect(keys).not.toContain("queue.evisceration.mean");
});
