/** A plan -> changes worth trying -> what each is worth, simulated -> what to change first. See README.md. */

// The question

export { type WhyOptions, whyResponse, whyStudy } from "./whyStudy.ts";

// The answer

export { answerWhy, type WhyTools } from "./answerWhy.ts";

// What can be tried

export type { PlanChange } from "./change.ts";
export { changesToTry } from "./changesToTry.ts";
export { guardedSteps } from "./guardedSteps.ts";
