/** A plan -> changes worth trying -> what each is worth, simulated -> what to change first. See README.md. */

export { type AdviceOptions, adviceResponse, whyStudy } from "./adviceStudy.ts";
export type { Simulate } from "./adviceTrials.ts";
export { type AdviseTools, advise } from "./advise.ts";
export type { PlanChange } from "./change.ts";
export { changesToTry } from "./changesToTry.ts";
export { guardedSteps } from "./guardedSteps.ts";
