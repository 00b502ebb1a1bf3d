/** A plan and a total to share out -> designs tried -> the best one, picked with a stated probability. */

// The question

export { improveJsonSchema } from "./improveJsonSchema.ts";
export type { ImproveQuestion } from "./question.ts";
export { type ImproveReading, readImprove } from "./readImprove.ts";

// The answer

export { comparisonSeed, type ImproveTools, improve } from "./improve.ts";
export type { CurvePoint, Finalist, Found, Improvement, Recommendation, TriedDesign } from "./improvement.ts";
export { improvementStudy } from "./improvementStudy.ts";
export { readImprovement } from "./readImprovement.ts";

// What can be tried

export { countDesigns } from "./countDesigns.ts";
export type { CandidateDesign } from "./designs.ts";
export { variantOf } from "./designs.ts";
export { isMoved } from "./space.ts";
