import { expect, test } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { guardedSteps, noWaitingBefore } from "../../../../sim/questions/why/guardedSteps.ts";
import { dwell, planOf, saturated, station } from "../../../support/plans.ts";

const LINE = [
  station("hanging", 3),
  station("a", 3),
  station("b", 3),
  dwell("trough", 60, 30),
  station("c", 3),
  station("d", 3),
];
const plan = (changes: Partial<Plan> = {}): Plan => planOf(saturated(10), LINE, changes);
const names = (found: ReadonlySet<string>) => [...found].sort();

test("a plan that says nothing guards its dwells, and what is called by the trade's words", () => {
  expect(names(guardedSteps(plan()))).toEqual(["trough"]);
  const line = ["Stunning", "sticking", "bleeding table", "skinning", "post-mortem inspection", "chilling"];
  const named = planOf(
    saturated(10),
    line.map((name) => station(name, 3)),
  );
  expect(names(guardedSteps(named))).toEqual(line.filter((name) => name !== "skinning").sort());
  expect(names(noWaitingBefore(named))).toEqual(["sticking"]);
});

test("the stretch that no stop may leave a head on is guarded; before its first step heads may wait", () => {
  const safe = plan({ day: { ...plan().day, safeStop: { from: "a", to: "trough" } } });
  expect(names(guardedSteps(safe))).toEqual(["a", "b", "trough"]);
  expect(names(noWaitingBefore(safe))).toEqual(["b", "trough"]);
});

test("so is the stretch of a gate", () => {
  const gates = [{ name: "gate", from: "a", to: { stage: "b", moment: "start" as const }, atMost: 1 }];
  expect(names(guardedSteps(plan({ gates })))).toEqual(["a", "b", "trough"]);
  expect(names(noWaitingBefore(plan({ gates })))).toEqual(["b"]);
});

test("so is the way from stunning to sticking that the plan cares for", () => {
  const stunned = { from: "a", to: "c", hold: true, late: null };
  expect(names(guardedSteps(plan({ stunned })))).toEqual(["a", "b", "c", "trough"]);
  expect(names(noWaitingBefore(plan({ stunned })))).toEqual(["b", "c", "trough"]);
});

test("so is what lies between the two points of a limit with a minimum, but not of one with a maximum alone", () => {
  const limit = (minSeconds: number | null, maxSeconds: number | null) => ({
    ...{ name: "limit", source: "", minSeconds, maxSeconds },
    from: { stage: "c", moment: "end" as const },
    to: { stage: "d", moment: "end" as const },
  });
  expect(names(guardedSteps(plan({ limits: [limit(5, null)] })))).toEqual(["c", "d", "trough"]);
  expect(names(guardedSteps(plan({ limits: [limit(null, 50)] })))).toEqual(["trough"]);
});
