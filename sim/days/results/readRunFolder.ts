import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readResults } from "./readResults.ts";
import type { StudyResults } from "./studyResults.ts";

/** `plan` is the JSON of the base plan as it was read for the run; null where the folder does not have it. */
export type RunFolderReading =
  | { results: StudyResults; plan: unknown; problem: null }
  | { results: null; plan: null; problem: string };

/**
 * The results in a run folder, with the base plan they are of: what a report is drawn from. `problem` says, in words,
 * why a folder holds none. Needs Node. Example:
 *
 *     const { results, plan, problem } = readRunFolder("run");
 *     if (results === null) throw new Error(problem);
 *     renderReport(results, { planFile: plan });
 */
export function readRunFolder(folder: string): RunFolderReading {
  const path = join(folder, "results.json");
  if (!existsSync(path)) return none(`${folder}: holds no results.json; name the folder of a day or study`);
  const { results, problem } = readResults(readFileSync(path, "utf8"));
  if (results === null) return none(`${path}: ${problem}`);
  const planPath = join(folder, "plan.json");
  if (!existsSync(planPath)) return { results, plan: null, problem: null };
  try {
    return { results, plan: JSON.parse(readFileSync(planPath, "utf8")), problem: null };
  } catch {
    return none(`${planPath}: this is no JSON; the file is cut off or was changed, so run it again`);
  }
}

function none(problem: string): RunFolderReading {
  return { results: null, plan: null, problem };
}
