import type { RunFile, StudyResults } from "../days/results/index.ts";
import { checkRunFolder, takeRunFolder } from "./checkRunFolder.ts";
import { lockFolder } from "./openRunJournal.ts";
import type { RunAnswer } from "./writeRun.ts";

/**
 * Simulates and writes a folder. `beside`, asked when the run is done, gives files that go into it besides those of every
 * run, and an answer that is more than the study's. Nobody else may write to the folder meanwhile, and one that cannot be
 * written costs no time.
 */
export async function runInto(
  folder: string,
  overwrite: boolean,
  plan: unknown,
  simulate: () => StudyResults | Promise<StudyResults>,
  beside: (results: StudyResults) => { files: readonly RunFile[]; answer: RunAnswer } = () => ({
    files: [],
    answer: {},
  }),
): Promise<StudyResults> {
  checkRunFolder(folder, overwrite);
  // The report is a heavy thing to load: only when it is asked for.
  const writer = await import("./writeRun.ts");
  const unlock = await lockFolder(folder);
  try {
    takeRunFolder(folder, overwrite);
    const results = await simulate();
    const { files, answer } = beside(results);
    writer.writeRun(folder, { results, plan, studyText: null }, overwrite, files, answer);
    return results;
  } finally {
    unlock();
  }
}
