/** What a plan's line can do, worked out without simulating it. */

export type { Ceiling } from "./ceiling.ts";
export { ceilings } from "./ceilings.ts";
// A whole day
export { type DayEstimate, estimateDay } from "./estimateDay.ts";
export { estimateLine, type LineEstimate } from "./estimateLine.ts";
export { type HeadFlow, headFlow } from "./headFlow.ts";
export { inOrderSeconds } from "./inOrderSeconds.ts";
export { stretchSeconds } from "./stretchSeconds.ts";
