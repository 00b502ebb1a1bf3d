import type { StudyResults } from "../contract.ts";
import type { ChartTable } from "../pictures/index.ts";
import { inputRows } from "../pictures/index.ts";
import { studyCharts } from "./studyCharts.ts";

/** The figures of all pictures of a study as tables, by the name of the picture's file, and every input with its source. */
export function chartTables(
  results: StudyResults,
  planFile: unknown,
): { name: string; title: string; table: ChartTable }[] {
  return [
    { name: "inputs", title: "Every input of today's plan with its source", table: inputTable(results, planFile) },
    ...studyCharts(results).map(({ name, title, table }) => ({ name, title, table: table() })),
  ];
}

function inputTable({ plan }: StudyResults, planFile: unknown): ChartTable {
  const columns = ["input", "value", "kind of source", "source"].map((name) => ({ name, unit: "" }));
  return {
    columns,
    rows: inputRows(planFile, plan.sources).map(({ path, value, kind, note }) => [path, value, kind, note]),
  };
}
