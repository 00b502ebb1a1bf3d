// The study: a base plan and its variants

export type { Factor, Study, Variant } from "./study.ts";

// Reading study files

export { readStudy, type StudyOptions, type StudyReading } from "./readStudy.ts";
export { studyJsonSchema } from "./studyJsonSchema.ts";
