/** Estimates -> results.json, CSV, a run folder. */

export { type RunFile, type RunParts, runFiles } from "./runFiles.ts";
// As a folder on disk
export { runFolderProblem } from "./runFolderProblem.ts";
export { safeFileName } from "./safeFileName.ts";
// As text
export { stableJson } from "./stableJson.ts";
// What a study found
export type { Difference, Estimate, ResponseInfo, StudyResults, VariantResults } from "./studyResults.ts";
export { writeRunFolder } from "./writeRunFolder.ts";
