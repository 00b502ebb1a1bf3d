import { expect, it } from "vitest";
import { DayTooLong } from "../../../sim/engine/index.ts";
import { compileLine, runDay } from "../../../sim/index.ts";
import type { Plan } from "../../../sim/plan/index.ts";
import { breakdown } from "../../support/breakdowns.ts";
import { chain, dwell, planOf, saturated, station, stream } from "../../support/plans.ts";

const DAY = { seed: "1", replication: 0 };
const FLUTTER = breakdown(1e-6, 1e-6, { clock: "calendar" });

it.each<[string, Plan, RegExp]>([
  ["quick work", planOf(saturated(1e6), [station("skinning", 1e-4), station("slow", 50)]), /at 'slow'|at 'skinning'/],
  [
    "a failure that flutters",
    planOf(saturated(1e6), [station("a", 5), station("b", 5, { breakdowns: [FLUTTER] })]),
    /at 'b'/,
  ],
  ["a quick dwell", planOf(saturated(1e6), [station("a", 1e-4), dwell("bleeding", 1e-4, 1)]), /at '(a|bleeding)'/],
  ["a quick chain", planOf(saturated(1e6), [station("a", 1e-4), chain("rail", 10, 1e-4, [])]), /at '(a|rail)'/],
  [
    "arrivals",
    planOf(stream({ family: "constant", value: 1e-6 }, 1e6), [station("a", 5, { buffer: Infinity })]),
    /arriving/,
  ],
])("stops a day with too many events of %s, and names where they are", (_, plan, where) => {
  const run = () => runDay(compileLine(plan), { ...DAY, mostEvents: 20_000 });
  expect(run).toThrow(DayTooLong);
  expect(run).toThrow(/more than 20000 events, the latest of them \d+\.\d\d h after its start, .*raise the ceiling/);
  expect(run).toThrow(where);
});

it("lets a day pass that takes exactly so many, to the same record", () => {
  const line = compileLine(planOf(saturated(50), [station("a", 5), chain("rail", 10, 5, [])]));
  const day = runDay(line, DAY);
  expect(runDay(line, { ...DAY, mostEvents: day.events })).toEqual(day);
  expect(() => runDay(line, { ...DAY, mostEvents: day.events - 1 })).toThrow(DayTooLong);
});
