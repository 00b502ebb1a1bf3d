/** Estimates -> results.json, CSV, a run folder. */

// What a study found
export { type ComparisonInWords, comparisonsInWords } from "./comparisonsInWords.ts";
// As text
export { type DataDictionary, dataDictionary, dictionaryCsv } from "./dataDictionary.ts";
export { dayRecordShape } from "./dayRecordShape.ts";
// The answer to its question
export type { Answer, Decision, DecisionRow, Gain, NetMoney } from "./decision.ts";
export { type DifferenceInWords, differenceInWords } from "./differenceInWords.ts";
export type { Difference, MeanEstimate, Reduction } from "./figures.ts";
// What a change makes worse
export { harmOf, harmResponses } from "./harm.ts";
export type { KillLineResults, StunToStick } from "./killLineResults.ts";
// As a folder on disk
export { makeFolders } from "./makeFolders.ts";
export { type ReadResults, readResults } from "./readResults.ts";
export { type Drawn, rebuiltFiles } from "./rebuiltFiles.ts";
export { type RunFile, type RunParts, runFiles } from "./runFiles.ts";
export { runFolderProblem } from "./runFolderProblem.ts";
export { safeFileName } from "./safeFileName.ts";
export { stableJson, stableJsonParts } from "./stableJson.ts";
export type {
  AgainstBest,
  CapacityResults,
  CostSheet,
  ElementaryEffects,
  Estimate,
  LevelStep,
  MassBalance,
  PlannedStopCost,
  ProcedureResults,
  ResponseInfo,
  SelectionResults,
  StoppingResults,
  StudyResults,
  UtilitySheet,
  VariantResults,
} from "./studyResults.ts";
export { summaryTable } from "./summaryCsv.ts";
// Why days ended when they did, and what to change
export type {
  Advice,
  AdviceEffort,
  BoundPart,
  ChangeKind,
  MeanTime,
  OtherChange,
  SlopeEstimate,
  TriedChange,
  Why,
  WithheldSlope,
} from "./why.ts";
export { type Sheet, workbook } from "./workbook.ts";
export { mendRunFolder, writeRunFolder } from "./writeRunFolder.ts";
