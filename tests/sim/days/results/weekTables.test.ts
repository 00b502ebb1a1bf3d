import { csvParse } from "d3-dsv";
import { expect, test } from "vitest";
import { dataDictionary, weekMoment, weekTables } from "../../../../sim/days/results/index.ts";
import { weekCsvs } from "../../../../sim/days/results/weekTables.ts";
import { exampleDay } from "../../../support/exampleDay.ts";
import { exampleWeek } from "../../../support/exampleWeek.ts";

const RESULTS = await exampleWeek();
const WEEK = RESULTS.variants[0]!.day.week!;

function read(path: string, results = RESULTS) {
  return csvParse(weekCsvs(results).find((file) => file.path === path)!.text);
}

/** Seconds after midnight of the first day of the example. */
function seconds(text: string): number {
  return (Date.parse(`${text}Z`) - Date.UTC(2031, 2, 17)) / 1000;
}

test("a row for each day of work, with what came over the night and what goes on", () => {
  const rows = read("week.csv");
  expect(rows.map(({ day }) => day)).toEqual(["Monday", "Tuesday", "Thursday"]);
  expect(rows.map(({ starts_date_time }) => starts_date_time)).toEqual(
    ["17", "18", "20"].map((day) => `2031-03-${day}T05:00:00`),
  );
  rows.slice(1).forEach((row, index) => {
    expect(row.from_before_lairage_heads).toBe(rows[index]!.left_lairage_heads);
    expect(row.from_before_line_heads).toBe(rows[index]!.left_line_heads);
  });
  expect(Number(rows[0]!.left_lairage_heads)).toBeGreaterThan(0);
  expect(Number(rows[1]!.overtime_s)).toBeCloseTo(WEEK.days[1]!.workFinishSeconds - WEEK.days[1]!.shiftEndSeconds, 2);
  expect(rows[0]!.overtime_s).toBe("0");
});

test("a row for each lot; its heads are out by destination, and those of all lots are those of the days", () => {
  const rows = read("lots.csv");
  expect(rows).toHaveLength(WEEK.lots.length);
  const sum = (column: string) => rows.reduce((total, row) => total + Number(row[column]), 0);
  const ofDays = (way: string) => WEEK.days.reduce((total, { heads }) => total + heads.out[way]!, 0);
  expect(sum("out_carcass_heads")).toBe(ofDays("carcass"));
  expect(sum("out_dead_on_arrival_heads")).toBe(ofDays("dead on arrival"));
  rows.forEach((row, index) => {
    const lot = WEEK.lots[index]!;
    expect(row.lot).toBe(String(index + 1));
    expect(seconds(row.due_date_time!)).toBeCloseTo(lot.dueSeconds, -1);
    if (lot.firstHungSeconds === null) expect([row.first_hung_date_time, row.waited_s]).toEqual(["", ""]);
    else expect(Math.abs(seconds(row.first_hung_date_time!) - lot.firstHungSeconds)).toBeLessThanOrEqual(0.5);
  });
});

test("a row for each order, in its own measure", () => {
  const [rush, hotel] = read("orders.csv");
  expect(rush).toMatchObject({ order: "rush", wanted: "9000", unit: "carcasses", filled_date_time: "" });
  expect(rush!.due_date_time).toBe("2031-03-18T10:00:00");
  expect(Number(rush!.missing)).toBe(WEEK.orders[0]!.short);
  expect(hotel!.order).toBe("hotel");
});

test("a row for each day of every simulated week, the first of which is told in week.csv as well", () => {
  const rows = read("weeks.csv");
  expect(rows.map(({ week, day }) => `${week} ${day}`)).toEqual(
    ["1", "2"].flatMap((week) => ["Monday", "Tuesday", "Thursday"].map((day) => `${week} ${day}`)),
  );
  const first = read("week.csv");
  for (const column of ["work_ends_date_time", "carcasses", "left_lairage_heads"])
    expect(rows.slice(0, 3).map((row) => row[column])).toEqual(first.map((row) => row[column]));
  expect(Number(rows[4]!.overtime_with_cleaning_s)).toBeCloseTo(RESULTS.variants[0]!.values["Tuesday.overtime"]![1]!, 2);
});

test("without a date the first day is the invented one of all tables", () => {
  const week = { ...RESULTS.plan.week!, begins: null };
  expect(weekMoment(week, 86_400 + 6 * 3600 + 0.4).toISOString()).toBe("2001-01-02T06:00:00.000Z");
  const [first] = read("week.csv", { ...RESULTS, plan: { ...RESULTS.plan, week } });
  expect(first!.starts_date_time).toBe("2001-01-01T05:00:00");
});

test("every column is explained, and a plan of one day has no such tables", () => {
  const { tables } = dataDictionary(RESULTS);
  for (const { path, text } of weekCsvs(RESULTS)) {
    const header = text.slice(0, text.indexOf("\n")).split(",");
    expect(tables.find(({ file }) => file === path)!.columns.map(({ name }) => name)).toEqual(header);
  }
  expect(weekTables(exampleDay("parts/crews", "none"))).toEqual([]);
});
