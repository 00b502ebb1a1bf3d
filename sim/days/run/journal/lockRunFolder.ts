import { rmdirSync } from "node:fs";
import { partialFolder } from "./partialFolder.ts";
import { releaseRunLock, takeRunLock } from "./runLock.ts";

/**
 * Makes this process the only one that may write to a run folder; a `JournalProblem` when another one does. Gives what
 * ends it. The lock lies where the journal of a study into that folder would lie.
 */
export function lockRunFolder(folder: string): () => void {
  const beside = partialFolder(folder);
  takeRunLock(beside);
  return () => {
    releaseRunLock(beside);
    try {
      rmdirSync(beside);
    } catch {
      // An unfinished study is kept there.
    }
  };
}
