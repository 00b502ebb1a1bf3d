/** A plan and a total to share out -> designs tried -> the best one, picked with a stated probability. */

export { countDesigns } from "./countDesigns.ts";
export type { CandidateDesign } from "./designs.ts";
export { variantOf } from "./designs.ts";
export { comparisonSeed, type ImproveTools, improve } from "./improve.ts";
export { improveJsonSchema } from "./improveJsonSchema.ts";
export type { CurvePoint, Finalist, Found, Improvement, Recommendation, TriedDesign } from "./improvement.ts";
export type { ImproveQuestion } from "./question.ts";
export { type ImproveReading, readImprove } from "./readImprove.ts";
export { readImprovement } from "./readImprovement.ts";
