import { expect, it } from "vitest";
import { DayLedger } from "../../../../sim/days/run/dayLedger.ts";

function day(variant: number, replication: number, value = 0) {
  return { variant, replication, values: [value], day: null };
}

it("puts days in place whatever their order, and keeps the first of two copies", () => {
  const ledger = new DayLedger(2);
  expect([day(1, 1), day(1, 0), day(1, 1, 9)].map((each) => ledger.place(each))).toEqual([true, true, false]);
  expect(ledger.daysOf(1)).toEqual([day(1, 0), day(1, 1)]);
  expect(ledger.daysOf(0)).toEqual([]);
  expect(ledger.count).toBe(2);
});

it("names the missing days in runs as long as can be", () => {
  const ledger = new DayLedger(1);
  for (const replication of [2, 3, 6]) ledger.place(day(0, replication));
  expect(ledger.missing(0, 9)).toEqual([
    { variant: 0, first: 0, count: 2 },
    { variant: 0, first: 4, count: 2 },
    { variant: 0, first: 7, count: 2 },
  ]);
  expect(ledger.missing(0, 0)).toEqual([]);
});

it("refuses to give days with a hole in them", () => {
  const ledger = new DayLedger(1);
  ledger.place(day(0, 1));
  expect(() => ledger.daysOf(0)).toThrow(/day 0 of variant 0 is missing/);
});
