import readWorkbook, { readSheet } from "read-excel-file/node";
import { expect, test } from "vitest";
import { workbook } from "../../../../sim/days/results/index.ts";

const text = (name: string) => ({ name, unit: "" });

/** Sheets as another library reads them. */
async function read(sheets: Parameters<typeof workbook>[0]) {
  return readWorkbook(Buffer.from(await workbook(sheets)));
}

test("numbers stay numbers and texts texts, with names and units above them", async () => {
  const columns = [text("what"), { name: "mass", unit: "kg" }];
  const [sheet] = await read([
    {
      name: "mass",
      columns,
      rows: [
        ["carcass", 5600.25],
        ["nothing", null],
      ],
    },
  ]);
  expect(sheet).toMatchObject({
    sheet: "mass",
    data: [
      ["what", "mass"],
      [null, "kg"],
      ["carcass", 5600.25],
      ["nothing", null],
    ],
  });
});

test("a text that looks like a formula is no formula, and what XML forbids is replaced", async () => {
  const [sheet] = await read([{ name: "a", columns: [text("x")], rows: [["=1+1"], ["a\u0000b"]] }]);
  expect(sheet!.data.slice(1)).toEqual([["=1+1"], ["a?b"]]);
});

test("names of sheets are cleaned, shortened and told apart", async () => {
  const long = "a name that is far too long for the name of a sheet";
  const sheets = [long, long, "in/out: [1]?", ""].map((name) => ({ name, columns: [text("x")], rows: [["y"]] }));
  const names = (await read(sheets)).map(({ sheet }) => sheet);
  expect(new Set(names).size).toBe(4);
  expect(names[2]).toBe("in-out- -1--");
  for (const name of names) expect(name.length).toBeLessThanOrEqual(31);
});

test("more rows than a spreadsheet takes are refused, not cut", async () => {
  const rows = { length: 1_048_576 } as unknown as [][];
  await expect(workbook([{ name: "a", columns: [text("x")], rows }])).rejects.toThrow(/1048576 rows in "a"/);
});

test("the default reader and that of one sheet agree", async () => {
  const file = Buffer.from(await workbook([{ name: "a", columns: [text("x")], rows: [["y"]] }]));
  expect(await readSheet(file)).toEqual([["x"], ["y"]]);
});
