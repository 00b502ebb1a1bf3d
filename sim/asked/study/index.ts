// The study: a base plan and its variants

export { type Draws, drawsOf } from "./drawsOf.ts";
export {
  type Blocks,
  type Control,
  type Design,
  ERROR_RATES,
  type ErrorRate,
  type Factor,
  type Insertion,
  PLAIN_PROCEDURE,
  type Precision,
  type Procedure,
  QUESTION_KINDS,
  type QuestionKind,
  type Selection,
  type StoppingRule,
  type Study,
  type Variant,
} from "./study.ts";

// Reading study files

export type { KnownResponse } from "./knownResponse.ts";
export { readOnce } from "./readOnce.ts";
export { readStudy, type StudyOptions, type StudyReading } from "./readStudy.ts";
export { studyJsonSchema } from "./studyJsonSchema.ts";

// For other files that name a plan and change it

export { type BasePlan, basePlan } from "./basePlan.ts";
export { changedJson, planWith } from "./buildVariants.ts";
export { type Change, joinChanges, toChange } from "./change.ts";
export { latinHypercube } from "./draftLatinHypercube.ts";
export { amountFault } from "./responseFaults.ts";
export { type Amount, amountAboveZero } from "./schema/amount.ts";
export { changeKeys } from "./schema/changeFile.ts";
export { seed } from "./schema/seed.ts";
export { planReference } from "./schema/studyFile.ts";
