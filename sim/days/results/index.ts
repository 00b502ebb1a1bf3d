/** Estimates -> results.json, CSV, a run folder. */

// The answer to its question

export type { Decision, DecisionRow, Gain, NetMoney, VerdictKind } from "./decision.ts";

// What a study found

export { type ComparisonInWords, comparisonsInWords } from "./comparisonsInWords.ts";
export { type DifferenceInWords, differenceInWords } from "./differenceInWords.ts";
export { drawnVariants } from "./drawnVariants.ts";
export { endedDay } from "./endedDay.ts";
export type { Difference, MeanEstimate, Reduction } from "./figures.ts";
export type { KillLineResults, StunToStick } from "./killLineResults.ts";
export { periodOf } from "./periodOf.ts";
export type {
  AgainstBest,
  CapacityResults,
  CostSheet,
  EffectShare,
  ElementaryEffects,
  Estimate,
  LevelStep,
  MassBalance,
  PlannedStopCost,
  ProcedureResults,
  ResponseInfo,
  SelectionResults,
  StoppingResults,
  StudyEffect,
  StudyEffects,
  StudyResults,
  UtilitySheet,
  VariantResults,
  WeekOutline,
} from "./studyResults.ts";

// Why days ended when they did, and what to change

export type {
  Advice,
  AdviceEffort,
  ChangeKind,
  MeanTime,
  OtherChange,
  ReasonPart,
  SlopeEstimate,
  TriedChange,
  Why,
  WithheldSlope,
} from "./why.ts";

// What a change makes worse

export { harmOf, harmResponses, shownMore } from "./harm.ts";

// As text and tables

export { csvText } from "./csvText.ts";
export { type DataDictionary, dataDictionary, dictionaryCsv } from "./dataDictionary.ts";
export { figureCell, resultsTable, spanCell } from "./resultsTable.ts";
export { stableJson, stableJsonParts } from "./stableJson.ts";
export { weekCalendar } from "./weekCalendar.ts";
export { type WeekCell, type WeekTable, weekMoment, weekTables } from "./weekTables.ts";
export { type Sheet, type SheetCell, type SheetTable, tableRows, tableWidths, workbook } from "./workbook.ts";

// Read back

export { dayRecordShape } from "./dayRecordShape.ts";
export { type ReadResults, readResults } from "./readResults.ts";
export { type RunFolderReading, readRunFolder } from "./readRunFolder.ts";

// As a folder on disk

export { makeFolders } from "./makeFolders.ts";
export { type Drawn, rebuiltFiles } from "./rebuiltFiles.ts";
export { type RunFile, type RunParts, runFiles } from "./runFiles.ts";
export { runFolderProblem } from "./runFolderProblem.ts";
export { safeFileName } from "./safeFileName.ts";
export { mendRunFolder, writeRunFolder } from "./writeRunFolder.ts";
