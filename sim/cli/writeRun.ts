import { chartFiles, renderReport } from "../../viz/index.ts";
import {
  mendRunFolder,
  type RunFile,
  type RunParts,
  runFiles,
  runFolderProblem,
  writeRunFolder,
} from "../results/index.ts";
import { BadInput } from "./badInput.ts";

/** Refuses a folder that cannot take a run before time is spent on the run. */
export function checkRunFolder(folder: string, overwrite: boolean): void {
  const problem = runFolderProblem(folder, overwrite);
  if (problem !== null) throw new BadInput([problem]);
}

/** The same once nobody else can use the folder: what a kill left of it is put right first. */
export function takeRunFolder(folder: string, overwrite: boolean): void {
  mendRunFolder(folder);
  checkRunFolder(folder, overwrite);
}

/** Draws the report and the charts and writes the run folder, with `more` files in it, whole or not at all. */
export function writeRun(
  folder: string,
  parts: Pick<RunParts, "results" | "plan" | "studyText">,
  overwrite: boolean,
  more: readonly RunFile[] = [],
): void {
  const { results } = parts;
  const reportHtml = renderReport(results, { planFile: parts.plan });
  const files = runFiles({ ...parts, reportHtml, charts: chartFiles(results) });
  writeRunFolder(folder, [...files, ...more], overwrite);
}
