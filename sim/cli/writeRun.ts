import { chartFiles, renderReport } from "../../viz/index.ts";
import type { Improvement } from "../improve/index.ts";
import {
  mendRunFolder,
  type RunFile,
  type RunParts,
  runFiles,
  runFolderProblem,
  writeRunFolder,
} from "../results/index.ts";
import type { LineUp } from "../worth/index.ts";
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

/** The answer of a run that is more than its study. */
export interface RunAnswer {
  improvement?: Improvement | undefined;
  lineUp?: LineUp | undefined;
}

/**
 * Draws the report, with `answer` first in it, and the charts, and writes the run folder, with `more` files in it, whole or
 * not at all.
 */
export function writeRun(
  folder: string,
  parts: Pick<RunParts, "results" | "plan" | "studyText">,
  overwrite: boolean,
  more: readonly RunFile[] = [],
  answer: RunAnswer = {},
): void {
  const { results } = parts;
  const reportHtml = renderReport(results, { planFile: parts.plan, ...answer });
  const files = runFiles({ ...parts, reportHtml, charts: chartFiles(results, answer) });
  writeRunFolder(folder, [...files, ...more], overwrite);
}
