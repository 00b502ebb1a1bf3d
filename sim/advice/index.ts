/** Binding path of a plan -> changes worth trying -> what each is worth. */

export { type AdviceOptions, adviceResponse, adviceStudy, whyStudy } from "./adviceStudy.ts";
export { advise } from "./advise.ts";
export type { PlanChange } from "./change.ts";
export { chooseChanges } from "./chooseChanges.ts";
