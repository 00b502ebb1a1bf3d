import readWorkbook from "read-excel-file/node";
import { expect, it } from "vitest";
import { runWorkbook } from "../../../sim/cli/runWorkbook.ts";
import { runStudy } from "../../../sim/days/run/index.ts";
import { chartTables } from "../../../viz/index.ts";
import { exampleWeek } from "../../support/exampleWeek.ts";
import { threeVariants } from "../../support/threeVariants.ts";

const STUDY = threeVariants({ name: "Slow skinning", question: "Is it worth it?", responses: ["finish", "carcasses"] });
const RESULTS = await runStudy(STUDY, { gambrel: "1", command: "gambrel study s.json" });
const SHEETS = await readWorkbook(Buffer.from(await runWorkbook(RESULTS, { line: [] })));

function rowsOf(name: string): unknown[][] {
  return SHEETS.find(({ sheet }) => sheet === name)!.data;
}

it("has at most eight sheets, named in words, and the first one says what each of the others is", () => {
  const [first, ...others] = SHEETS.map(({ sheet }) => sheet);
  expect(first).toBe("Answer");
  expect(SHEETS.length).toBeLessThanOrEqual(8);
  for (const name of others) {
    expect(name).toMatch(/^[A-Z][a-z ]+$/);
    expect(rowsOf("Answer").find(([cell]) => cell === name)?.[1]).toMatch(/^[a-z].{15,}/);
  }
});

it("begins with question, verdict and the table to decide by, times of day as times", () => {
  const rows = rowsOf("Answer");
  const { decision } = RESULTS;
  expect(rows.slice(0, 3).map((row) => row.slice(0, 2))).toEqual([
    ["Slow skinning", null],
    ["Question", "Is it worth it?"],
    ["Answer", decision!.verdict],
  ]);
  const heading = rows.findIndex(([cell]) => cell === "Variant");
  expect(rows.slice(heading + 1, heading + 4).map(([name]) => name)).toEqual(["base", "slower", "base again"]);
  const finish = rows[heading]!.indexOf(RESULTS.responses[0]!.label);
  for (const row of rows.slice(heading + 1, heading + 4)) expect(row[finish]).toBeInstanceOf(Date);
  expect(rows.flat()).toContain("Animal welfare and people's safety come before throughput.");
});

it("holds the figures of every picture under its title", () => {
  const cells = new Set(SHEETS.flatMap(({ data }) => data.map(([first]) => first)));
  for (const { title } of chartTables(RESULTS, { line: [] })) expect(cells).toContain(title);
});

it("has sheets of days, lots and orders of a week, whose moments are dates with their time", async () => {
  const week = await exampleWeek();
  const sheets = await readWorkbook(Buffer.from(await runWorkbook(week, { line: [] })));
  const named = (name: string) => sheets.find(({ sheet }) => sheet === name)!.data;
  const { days, lots } = week.variants[0]!.day.week!;
  expect(named("Days")).toHaveLength(1 + days.length);
  expect(named("Lots")).toHaveLength(1 + lots.length);
  expect(named("Orders")).toHaveLength(3);
  // A workbook holds days with a fraction, which the other library reads to about a millisecond.
  const starts = named("Days")[0]!.indexOf("starts_date_time");
  expect(
    named("Days")
      .slice(1)
      .map((row) => Math.round(Number(row[starts]) / 1000)),
  ).toEqual(["17", "18", "20"].map((day) => Date.parse(`2031-03-${day}T05:00:00Z`) / 1000));
  expect(named("Days")[1]![starts]).toBeInstanceOf(Date);
  const hung = named("Lots")[0]!.indexOf("first_hung_date_time");
  const unhung = lots.findIndex(({ firstHungSeconds }) => firstHungSeconds === null);
  expect(named("Lots")[1 + unhung]![hung]).toBeNull();
  // The answer is that of the week, day by day.
  const answer = named("Answer");
  const table = answer.findIndex(([cell]) => cell === "Day");
  expect(answer.slice(table + 1, table + 5).map(([name]) => name)).toEqual([
    "Monday",
    "Tuesday",
    "Thursday",
    "the week",
  ]);
  expect(answer.flat().join(" ")).toContain("2 simulated weeks of each variant");
});

it("has the name of the day with the time where a week has no date", async () => {
  const week = await exampleWeek({ begins: undefined }, 1);
  const sheets = await readWorkbook(Buffer.from(await runWorkbook(week, { line: [] })));
  const [heading, first] = sheets.find(({ sheet }) => sheet === "Days")!.data;
  expect(first![heading!.indexOf("starts_date_time")]).toBe("Monday 05:00");
});
