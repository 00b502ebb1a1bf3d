import { expect, it } from "vitest";
import { measure } from "../../../sim/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../support/wholeDay.ts";

const values = measure(handMadeDay(), HAND_MADE_PLAN);

it("gives state shares of position time that add up to one", () => {
  expect(values).toMatchObject({
    "working.skinning": 0.5,
    "blocked.skinning": 0.1,
    "starved.skinning": 0.2,
    "noCrew.skinning": 0.05,
    "down.skinning": 0.1,
    "onBreak.skinning": 0.05,
    "working.chilling": 0.75,
    "working.unloading": 0.5,
    "stops.skinning": 3,
  });
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
