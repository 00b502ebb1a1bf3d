import { safeFileName } from "./safeFileName.ts";
import { stableJson } from "./stableJson.ts";
import type { StudyResults } from "./studyResults.ts";
import { summaryCsv } from "./summaryCsv.ts";
import { tracesCsv } from "./tracesCsv.ts";
import { valuesCsv } from "./valuesCsv.ts";

/** One file of a run folder; `path` is relative to it, with "/" between folders. */
export interface RunFile {
  path: string;
  text: string;
}

/** What a run folder is made of besides the results themselves. */
export interface RunParts {
  results: StudyResults;
  /** The base plan as it was read, before any checking. */
  plan: unknown;
  /** Text of the study file as it was read; null for a single day. */
  studyText: string | null;
  reportHtml: string;
  charts: readonly { name: string; svg: string }[];
}

/** Every file of a run folder, as text; nothing is written here. */
export function runFiles({ results, plan, studyText, reportHtml, charts }: RunParts): RunFile[] {
  const traces = tracesCsv(results);
  return [
    { path: "plan.json", text: `${JSON.stringify(plan, null, 2)}\n` },
    ...(studyText === null ? [] : [{ path: "study.json", text: studyText }]),
    { path: "results.json", text: stableJson(results) },
    { path: "summary.csv", text: summaryCsv(results) },
    { path: "values.csv", text: valuesCsv(results) },
    ...(traces === null ? [] : [{ path: "traces.csv", text: traces }]),
    { path: "report.html", text: reportHtml },
    ...chartPaths(charts),
  ];
}

/**
 * Charts are named after stages and responses, which come from a plan: made safe, and told apart where that makes two
 * alike.
 */
function chartPaths(charts: readonly { name: string; svg: string }[]): RunFile[] {
  const taken = new Set<string>();
  return charts.map(({ name, svg }) => {
    const stem = safeFileName(name.replace(/\.svg$/i, ""));
    let unique = stem;
    for (let copy = 2; taken.has(unique); copy++) unique = `${stem}-${copy}`;
    taken.add(unique);
    return { path: `charts/${unique}.svg`, text: svg };
  });
}
