/** What a plan's line can do, worked out without simulating it. */

// A whole day

export { type DayEstimate, estimateDay } from "./estimateDay.ts";

// The line at work

export { type EstimatePrecision, estimateLine, type LineEstimate } from "./estimateLine.ts";
export { type HeadFlow, headFlow } from "./headFlow.ts";
export { inOrderSeconds } from "./inOrderSeconds.ts";
export { stretchSeconds } from "./stretchSeconds.ts";

// What sets a limit to it

export type { Ceiling } from "./ceiling.ts";
export { ceilings } from "./ceilings.ts";
