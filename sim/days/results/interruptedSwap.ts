import { existsSync, renameSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** Where a run folder is made before it takes its name, and where the one it replaces waits until it has. */
export function workFolders(target: string): { work: string; aside: string } {
  const beside = (what: string): string => join(dirname(target), `.${basename(target)}-gambrel-${what}`);
  return { work: beside("new"), aside: beside("old") };
}

/**
 * Clears up what a kill in the middle of writing a run folder left behind: a folder that was half made goes, and one
 * that had been put aside takes its name again unless a new one has it. Nobody else may be writing to the folder.
 */
export function mendInterruptedSwap(target: string): void {
  const { work, aside } = workFolders(target);
  if (existsSync(aside) && !existsSync(target)) renameSync(aside, target);
  for (const folder of [work, aside]) rmSync(folder, { recursive: true, force: true });
}
