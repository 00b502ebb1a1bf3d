import { type RunFile, writeRunFolder } from "../days/results/index.ts";
import { takeRunFolder } from "./checkRunFolder.ts";
import { lockFolder } from "./openRunJournal.ts";

/** Writes a folder of results, whole or not at all, while nobody else can. */
export async function writeFolder(folder: string, files: readonly RunFile[], overwrite: boolean): Promise<void> {
  const unlock = await lockFolder(folder);
  try {
    takeRunFolder(folder, overwrite);
    writeRunFolder(folder, files, overwrite);
  } finally {
    unlock();
  }
}
