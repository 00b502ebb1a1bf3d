import { expect, it } from "vitest";
import { dayTasks } from "../../../sim/run/dayTasks.ts";
import { HAND_MADE_STUDY } from "../../support/handMadeResults.ts";

it("has every replication of every variant once, and keeps the first of each with its traces", () => {
  const tasks = dayTasks({ ...HAND_MADE_STUDY, replications: 2 }, "exact");
  expect(tasks).toEqual([
    { variant: 0, replication: 0, traces: "exact", keepDay: true },
    { variant: 0, replication: 1, traces: "none", keepDay: false },
    { variant: 1, replication: 0, traces: "exact", keepDay: true },
    { variant: 1, replication: 1, traces: "none", keepDay: false },
  ]);
});
