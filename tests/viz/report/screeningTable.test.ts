import { expect, test } from "vitest";
import { chartFiles, renderReport } from "../../../viz/index.ts";
import { screeningTables } from "../../../viz/report/responseTable.ts";
import { screeningResults } from "../../support/screeningResults.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("the effects of a screening are a table, names escaped; other designs have none", () => {
  const results = screeningResults();
  results.factors[1]!.name = "<b>time</b>";
  const { markup } = screeningTables(results);
  expect(markup).toMatch(/&lt;b&gt;time.*46 heads\/h.*walking.*places/s);
  expect(markup).toContain("\u221246 heads/h");
  expect(screeningTables(syntheticStudy()).markup).toBe("");
});

test("the report of a screening has its picture, and none of single variants", () => {
  const names = chartFiles(screeningResults()).map(({ name }) => name);
  expect(names).toContain("screening-1-throughput");
  expect(names.filter((name) => /^(response|difference)/.test(name))).toEqual([]);
  expect(renderReport(screeningResults())).toContain("matters most");
});
