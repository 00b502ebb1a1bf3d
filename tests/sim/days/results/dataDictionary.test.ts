import { csvParse } from "d3";
import { describe, expect, it } from "vitest";
import { dataDictionary, dictionaryCsv, runFiles } from "../../../../sim/days/results/index.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";

const RESULTS = handMadeResults();
const DICTIONARY = dataDictionary(RESULTS);
const FILES = runFiles({ results: RESULTS, plan: {}, studyText: null, reportHtml: "", charts: [] });

describe("dataDictionary", () => {
  it("describes every column of every table that a run writes, in its order", () => {
    for (const file of FILES) {
      if (!file.path.endsWith(".csv")) continue;
      const text = "parts" in file ? [...file.parts].join("") : "text" in file ? file.text : "";
      const columns = DICTIONARY.tables.find((table) => table.file === file.path)!.columns;
      expect(columns.map(({ name }) => name)).toEqual(csvParse(text).columns);
    }
    const tables = FILES.map(({ path }) => path).filter((path) => /\.(csv|parquet)$/.test(path));
    expect(DICTIONARY.tables.map(({ file }) => file)).toEqual(tables);
  });

  it("gives each column a type and a description, and each number a unit or none on purpose", () => {
    for (const { name, type, unit, description } of DICTIONARY.tables.flatMap(({ columns }) => columns)) {
      expect(description, name).toMatch(/^.{10,}[.]$/);
      if (type === "number") expect(unit, name).not.toBe("");
      if (type === "text" || type === "yes or no" || type === "date-time") expect(unit, name).toBe("");
    }
  });

  it("describes every response with its unit and the direction that is wanted", () => {
    expect(DICTIONARY.responses.map(({ key }) => key)).toEqual(RESULTS.responses.map(({ key }) => key));
    const [headsPerHour, finish, beyond] = DICTIONARY.responses;
    expect(headsPerHour!.description).toMatch(/\(more is better\)$/);
    expect(finish).toMatchObject({ unit: "s after day start" });
    expect(finish!.description).toMatch(/a time of day, as seconds after the day's start; less is better/);
    expect(beyond!.description).toMatch(/a share from 0 to 1/);
  });

  it("leaves the traces out where a run has none", () => {
    const variants = RESULTS.variants.map((variant) => ({ ...variant, day: { ...variant.day, traces: null } }));
    const { tables } = dataDictionary({ ...RESULTS, variants });
    expect(tables.map(({ file }) => file)).not.toContain("traces.csv");
  });

  it("is a table too, columns first and responses after them", () => {
    const rows = csvParse(dictionaryCsv(DICTIONARY));
    expect(rows[0]).toMatchObject({ file: "summary.csv", column: "variant", response: "", type: "text" });
    expect(rows.at(-1)).toMatchObject({ file: "values.csv", column: "value", response: "beyond.chilling time" });
  });
});
