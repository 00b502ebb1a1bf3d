import { dataDictionary, dictionaryCsv } from "./dataDictionary.ts";
import { resultsParts } from "./resultsFile.ts";
import { safeFileName } from "./safeFileName.ts";
import { stableJson } from "./stableJson.ts";
import { stopsCsv } from "./stopsCsv.ts";
import type { StudyResults } from "./studyResults.ts";
import { summaryCsv } from "./summaryCsv.ts";
import { tracesCsv } from "./tracesCsv.ts";
import { hasValuesCsv, valuesCsv } from "./valuesCsv.ts";
import { valuesParquet } from "./valuesParquet.ts";
import { weekCsvs } from "./weekTables.ts";

/**
 * One file of a run folder; `path` is relative to it, with "/" between folders. What may be longer than one text can be
 * comes in parts.
 */
export type RunFile = { path: string } & ({ text: string } | { parts: Iterable<string> } | { bytes: Uint8Array });

/** What a run folder is made of besides the results themselves. */
export interface RunParts {
  results: StudyResults;
  /** The base plan as it was read, before any checking. */
  plan: unknown;
  /** Text of the study file as it was read; null for a single day. */
  studyText: string | null;
  reportHtml: string;
  charts: readonly { name: string; svg: string }[];
  /** Text of the calendar file of a plan's week (`weekCalendar`); left out or null: none. */
  calendar?: string | null;
}

/**
 * Every file of a run folder; nothing is written here. `plan` is the JSON of the base plan, `charts` and `reportHtml` come
 * from the pictures' door. Example:
 *
 *     const parts = { results, plan: json, studyText: null, reportHtml: renderReport(results), charts: chartFiles(results) };
 *     writeRunFolder("run", runFiles(parts), false);
 */
export function runFiles({ results, plan, studyText, reportHtml, charts, calendar = null }: RunParts): RunFile[] {
  const traces = tracesCsv(results);
  const stops = stopsCsv(results);
  const dictionary = dataDictionary(results);
  const paths = chartPaths(charts);
  return [
    { path: "plan.json", text: `${JSON.stringify(plan, null, 2)}\n` },
    ...(studyText === null ? [] : [{ path: "study.json", text: studyText }]),
    { path: "results.json", parts: resultsParts(results) },
    { path: "summary.csv", parts: summaryCsv(results) },
    ...(hasValuesCsv(results) ? [{ path: "values.csv", parts: valuesCsv(results) }] : []),
    { path: "values.parquet", bytes: valuesParquet(results) },
    ...(traces === null ? [] : [{ path: "traces.csv", parts: traces }]),
    ...(stops === null ? [] : [{ path: "stops.csv", parts: stops }]),
    ...weekCsvs(results),
    ...(calendar === null ? [] : [{ path: "week.ics", text: calendar }]),
    { path: "data-dictionary.json", text: stableJson(dictionary) },
    { path: "data-dictionary.csv", text: dictionaryCsv(dictionary) },
    { path: "report.html", text: reportHtml },
    ...charts.map(({ svg }, index) => ({ path: `${paths[index]!}.svg`, text: svg })),
  ];
}

/**
 * Where each chart goes, without ending. Charts are named after stages and responses, which come from a plan: made safe,
 * and told apart where that makes two alike.
 */
export function chartPaths(charts: readonly { name: string }[]): string[] {
  const taken = new Set<string>();
  return charts.map(({ name }) => {
    const stem = safeFileName(name.replace(/\.svg$/i, ""));
    let unique = stem;
    for (let copy = 2; taken.has(unique); copy++) unique = `${stem}-${copy}`;
    taken.add(unique);
    return `charts/${unique}`;
  });
}
