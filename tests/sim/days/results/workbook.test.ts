import readWorkbook, { readSheet } from "read-excel-file/node";
import { expect, test } from "vitest";
import { tableRows, tableWidths, workbook } from "../../../../sim/days/results/index.ts";

const text = (name: string) => ({ name, unit: "" });

/** Sheets as another library reads them. */
async function read(sheets: Parameters<typeof workbook>[0]) {
  return readWorkbook(Buffer.from(await workbook(sheets)));
}

/** A sheet of one table. */
function sheet(name: string, columns: { name: string; unit: string }[], rows: Parameters<typeof tableRows>[0]["rows"]) {
  return { name, rows: tableRows({ columns, rows }), frozen: 1, widths: tableWidths({ columns }) };
}

test("numbers stay numbers and texts texts, under names with their units", async () => {
  const columns = [text("what"), { name: "mass", unit: "kg" }];
  const rows = [
    ["carcass", 5600.25],
    ["nothing", null],
  ];
  const [found] = await read([sheet("mass", columns, rows)]);
  expect(found).toMatchObject({ sheet: "mass", data: [["what", "mass [kg]"], ...rows] });
});

test("shares are percentages, and times of day times that a spreadsheet can reckon with", async () => {
  const columns = [text("what"), { name: "share", unit: "%" }, text("at")];
  const file = await workbook([
    sheet("a", columns, [
      ["x", 12.5, "18:00"],
      ["y", { value: 0.25, as: "share" }, { value: 90_000, as: "clock" }],
    ]),
  ]);
  const [found] = await readWorkbook(Buffer.from(file));
  expect(found!.data[0]).toEqual(["what", "share", "at"]);
  expect(found!.data.slice(1).map((row) => row[1])).toEqual([0.125, 0.25]);
  // A workbook counts days from 1899-12-30 (ECMA-376, 1900 date base): three quarters of one, and 1 h on the next.
  expect(found!.data.slice(1).map((row) => row[2])).toEqual([
    new Date("1899-12-30T18:00:00Z"),
    new Date("1899-12-31T01:00:00Z"),
  ]);
});

test("a text that looks like a formula is no formula, and what XML forbids is replaced", async () => {
  const [found] = await read([sheet("a", [text("x")], [["=1+1"], ["a\u0000b"]])]);
  expect(found!.data.slice(1)).toEqual([["=1+1"], ["a?b"]]);
});

test("names of sheets are cleaned, shortened and told apart", async () => {
  const long = "a name that is far too long for the name of a sheet";
  const sheets = [long, long, "in/out: [1]?", ""].map((name) => sheet(name, [text("x")], [["y"]]));
  const names = (await read(sheets)).map(({ sheet }) => sheet);
  expect(new Set(names).size).toBe(4);
  expect(names[2]).toBe("in-out- -1--");
  for (const name of names) expect(name.length).toBeLessThanOrEqual(31);
});

test("more rows than a spreadsheet takes are refused, not cut", async () => {
  const rows = { length: 1_048_577 } as unknown as [][];
  await expect(workbook([{ name: "a", rows, frozen: 1, widths: [9] }])).rejects.toThrow(/1048577 rows in "a"/);
});

test("the default reader and that of one sheet agree", async () => {
  const file = Buffer.from(await workbook([sheet("a", [text("x")], [["y"]])]));
  expect(await readSheet(file)).toEqual([["x"], ["y"]]);
});
