import { expect, it } from "vitest";
import { DaySimulator, daySource } from "../../../../../sim/days/run/index.ts";
import { exactJson, parseExactJson, simulatedDayShape } from "../../../../../sim/days/run/wire/index.ts";
import { threeVariants } from "../../../../support/threeVariants.ts";

const SOURCE = daySource(threeVariants(), "binned", false);
const SHAPE = simulatedDayShape(SOURCE);
const FIRST = new DaySimulator(SOURCE).simulate(1, 0);
const SECOND = new DaySimulator(SOURCE).simulate(1, 1);

it.each([
  ["with its record", FIRST],
  ["without", SECOND],
])("takes a day that was simulated, %s, and leaves it as it was", (_, day) => {
  expect(SHAPE.parse(parseExactJson(exactJson(day)))).toEqual(day);
});

it.each([
  ["of a variant the study does not have", { ...SECOND, variant: 3 }],
  ["of no whole replication", { ...SECOND, replication: 1.5 }],
  ["with a value too few", { ...SECOND, values: SECOND.values.slice(1) }],
  ["with text for a value", { ...SECOND, values: SECOND.values.map(String) }],
  ["with NaN for a value", { ...SECOND, values: SECOND.values.map(() => Number.NaN) }],
  ["with a key too many", { ...SECOND, more: 1 }],
  ["of replication 0 without its record", { ...FIRST, day: null }],
  ["of a later replication with a record", { ...FIRST, replication: 1 }],
  ["with half a record", { ...FIRST, day: { ...FIRST.day, stages: null } }],
  ["that is none", null],
])("refuses a day %s", (_, day) => {
  expect(SHAPE.safeParse(day).success).toBe(false);
});
