import { expect, it } from "vitest";
import { DayLedger } from "../../../../sim/days/run/dayLedger.ts";
import { handMadeDay } from "../../../support/handMadeDay.ts";

function day(variant: number, replication: number, value = 0) {
  return { variant, replication, values: [value], day: null };
}

it("puts days in place whatever their order, and keeps the first of two copies", () => {
  const ledger = new DayLedger(2, ["a"]);
  const first = { ...day(1, 0, 3), day: handMadeDay() };
  expect([day(1, 1), first, day(1, 1, 9)].map((each) => ledger.place(each))).toEqual([true, true, false]);
  const kept = ledger.daysOf(1, 2);
  expect(kept.valuesOf("a")).toEqual([3, 0]);
  expect(kept.firstDay).toBe(first.day);
  expect(ledger.daysOf(0, 0)).toMatchObject({ keys: ["a"], days: 0 });
  expect(ledger.count).toBe(2);
});

it("names the missing days in runs as long as can be", () => {
  const ledger = new DayLedger(1, ["a"]);
  for (const replication of [2, 3, 6]) ledger.place(day(0, replication));
  expect(ledger.missing(0, 9)).toEqual([
    { variant: 0, first: 0, count: 2 },
    { variant: 0, first: 4, count: 2 },
    { variant: 0, first: 7, count: 2 },
  ]);
  expect(ledger.missing(0, 0)).toEqual([]);
});

it("refuses to give days with a hole in them", () => {
  const ledger = new DayLedger(1, ["a"]);
  ledger.place(day(0, 1));
  expect(() => ledger.daysOf(0, 2)).toThrow(/day 0 of variant 0 is missing/);
});

it("keeps every value to the bit, no value as none, over as many days as there are", () => {
  const ledger = new DayLedger(1, ["a", "b"]);
  const values = (row: number): (number | null)[] => [row % 7 === 3 ? null : 1 / (row - 40), row === 5 ? Infinity : -0];
  for (let row = 99; row >= 0; row--) ledger.place({ variant: 0, replication: row, values: values(row), day: null });
  const { valuesOf } = ledger.daysOf(0, 100);
  const expected = Array.from({ length: 100 }, (_, row) => values(row));
  expect(valuesOf("a")).toEqual(expected.map(([a]) => a));
  expect(valuesOf("b")).toEqual(expected.map(([, b]) => b));
  expect(ledger.daysOf(0, 2).valuesOf("of another plan")).toEqual([null, null]);
});
