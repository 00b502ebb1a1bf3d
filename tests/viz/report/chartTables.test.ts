import { expect, test } from "vitest";
import { chartFiles, chartTables } from "../../../viz/index.ts";
import { syntheticStudy } from "../../support/syntheticStudy.ts";

test("every picture has its table under the same name, and the inputs come first", () => {
  const study = syntheticStudy();
  const tables = chartTables(study, { line: [{ name: "a", cycle: "5 s" }] });
  expect(tables[0]!.table.rows).toEqual([["line.a.cycle", "5 s", "invented", study.plan.sources[0]!.note]]);
  expect(tables.slice(1).map(({ name }) => name)).toEqual(chartFiles(study).map(({ name }) => name));
  for (const { name, table } of tables) {
    for (const row of table.rows) expect(row, name).toHaveLength(table.columns.length);
  }
});
