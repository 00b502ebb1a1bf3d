import { mendRunFolder, runFolderProblem } from "../days/results/index.ts";
import { BadInput } from "./badInput.ts";

/** Refuses a folder that cannot take a run, before anything heavy is loaded or time is spent on the run. */
export function checkRunFolder(folder: string, overwrite: boolean): void {
  const problem = runFolderProblem(folder, overwrite);
  if (problem !== null) throw new BadInput([problem]);
}

/** The same once nobody else can use the folder: what a kill left of it is put right first. */
export function takeRunFolder(folder: string, overwrite: boolean): void {
  mendRunFolder(folder);
  checkRunFolder(folder, overwrite);
}
