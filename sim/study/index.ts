// The study: a base plan and its variants

export { type Draws, drawsOf } from "./drawsOf.ts";
export {
  type Control,
  type Design,
  ERROR_RATES,
  type ErrorRate,
  type Factor,
  type Insertion,
  PLAIN_PROCEDURE,
  type Precision,
  type Procedure,
  type Selection,
  type StoppingRule,
  type Study,
  type Variant,
} from "./study.ts";

// Reading study files

export type { KnownResponse } from "./knownResponse.ts";
export { readStudy, type StudyOptions, type StudyReading } from "./readStudy.ts";
export { setPathInPlace } from "./setPath.ts";
export { studyJsonSchema } from "./studyJsonSchema.ts";
