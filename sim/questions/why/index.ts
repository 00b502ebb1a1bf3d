/** A plan -> changes worth trying -> what each is worth, simulated -> what to change first. See README.md. */

export { answerWhy, type WhyTools } from "./answerWhy.ts";
export type { PlanChange } from "./change.ts";
export { changesToTry } from "./changesToTry.ts";
export { guardedSteps } from "./guardedSteps.ts";
export { type WhyOptions, whyResponse, whyStudy } from "./whyStudy.ts";
