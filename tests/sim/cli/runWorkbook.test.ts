import readWorkbook from "read-excel-file/node";
import { expect, it } from "vitest";
import { runWorkbook } from "../../../sim/cli/runWorkbook.ts";
import { runStudy } from "../../../sim/days/run/index.ts";
import { chartTables } from "../../../viz/index.ts";
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
