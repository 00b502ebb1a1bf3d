import { chartFiles, renderReport } from "../../viz/index.ts";
import { type RunFile, type RunParts, runFiles, writeRunFolder } from "../days/results/index.ts";
import type { Improvement } from "../questions/improve/index.ts";
import type { OptionsResult } from "../questions/options/index.ts";

/** The answer of a run that is more than its study. */
export interface RunAnswer {
  improvement?: Improvement | undefined;
  offers?: OptionsResult | undefined;
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
