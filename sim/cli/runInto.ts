import type { RunFile, StudyResults } from "../results/index.ts";
import { lockFolder } from "./openRunJournal.ts";

/** `more` are files that go into the folder besides those of every run, asked for when the run is done. Nobody else may write to the folder meanwhile, and one that cannot be written costs no time. */
export async function runInto(
  folder: string,
  overwrite: boolean,
  plan: unknown,
  simulate: () => StudyResults | Promise<StudyResults>,
  more: () => readonly RunFile[] = () => [],
): Promise<StudyResults> {
  // The report is a heavy thing to load: only when it is asked for.
  const writer = await import("./writeRun.ts");
  writer.checkRunFolder(folder, overwrite);
  const unlock = await lockFolder(folder);
  try {
    writer.takeRunFolder(folder, overwrite);
    const results = await simulate();
    writer.writeRun(folder, { results, plan, studyText: null }, overwrite, more());
    return results;
  } finally {
    unlock();
  }
}
