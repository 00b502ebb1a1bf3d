import { CAUTIONS, chartTables } from "../../viz/index.ts";
import { type Sheet, type StudyResults, summaryTable, workbook } from "../days/results/index.ts";

/** The tables of a run as a workbook: what it is, the summary, every input with its source, one sheet a picture. */
export function runTables(results: StudyResults, planFile: unknown): Promise<Uint8Array> {
  const tables = chartTables(results, planFile);
  const summary = summaryTable(results);
  return workbook([
    aboutSheet(results, tables),
    { name: "summary", ...summary },
    ...tables.map(({ name, table }) => ({ name, ...table })),
  ]);
}

function aboutSheet({ study, gambrel, plan }: StudyResults, tables: readonly { name: string; title: string }[]): Sheet {
  const rows = [
    ["Study", study.name],
    ["Question", study.question],
    ["Plan", plan.name],
    ["Days of each variant", study.replications],
    ["Confidence of intervals", study.confidence],
    ["Seed", study.seed],
    ["How to repeat it", study.command],
    ["Program", `gambrel ${gambrel}`],
    ...CAUTIONS.map((caution) => ["Caution", caution]),
    ["Sheet summary", "Every response of every variant, with intervals and differences to today's plan"],
    ...tables.map(({ name, title }) => [`Sheet ${name}`, title]),
  ];
  return { name: "about", columns: ["what", "value"].map((name) => ({ name, unit: "" })), rows };
}
