import { expect, it } from "vitest";
import type { Plan } from "../../../../sim/asked/plan/index.ts";
import { DayTooLong, PlantTooFull } from "../../../../sim/day/engine/index.ts";
import { compileLine, runDay } from "../../../../sim/index.ts";
import { breakdown } from "../../../support/breakdowns.ts";
import { chain, dwell, planOf, saturated, station, stream } from "../../../support/plans.ts";

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

it("holds a line of single machines to the same number of events, which are not simulated one by one there", () => {
  const line = compileLine(planOf(saturated(50), [station("a", 5), station("b", 4, { buffer: 2 })]));
  const day = runDay(line, DAY);
  expect(runDay(line, { ...DAY, mostEvents: day.events })).toEqual(day);
  expect(() => runDay(line, { ...DAY, mostEvents: day.events - 1 })).toThrow(DayTooLong);
  expect(() => runDay(line, { ...DAY, mostEvents: 50 })).toThrow(DayTooLong);
});

it.each<[string, Plan]>([
  ["a stage", planOf(saturated(1e4), [station("quick", 1), station("slow", 1e4, { buffer: Infinity, positions: 2 })])],
  [
    "a line of single machines",
    planOf(saturated(1e4), [station("quick", 0.01), station("slow", 50, { buffer: Infinity })]),
  ],
])("gives up a day on which more and more heads stand before %s, and names the stage", (_, plan) => {
  const run = () => runDay(compileLine(plan), { ...DAY, mostPresent: 5000 });
  expect(run).toThrow(PlantTooFull);
  expect(run).toThrow(/more than 5000 heads and crates are in the plant at once \d+\.\d\d h .* most of them at 'slow'/);
});

it.each([1, 2])("lets a plant be as full as it is allowed to be, with %i machines at the full stage", (positions) => {
  const buffer = 10 - positions;
  const line = compileLine(planOf(saturated(20), [station("a", 1), station("b", 3, { buffer, positions })]));
  const day = runDay(line, DAY);
  expect(runDay(line, { ...DAY, mostPresent: 11 })).toEqual(day);
  expect(() => runDay(line, { ...DAY, mostPresent: 10 })).toThrow(PlantTooFull);
});
