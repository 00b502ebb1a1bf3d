/** One day with its whole course: what was where at any moment. */

// One day

export { MAX_PASSES, recordCourse, recordInParts } from "./recordCourse.ts";

// What is kept

export { CRATE_PLACES, type DayCourse, HEAD_COUNTS, type LimitDanger } from "./dayCourse.ts";
export type { ChainSketch, LineSketch, StageSketch } from "./lineSketch.ts";
export { CourseTooLong, type HeadWays } from "./passLog.ts";

// Reading it

export { lastAtOrBefore, rowAt, stepAt } from "./stepAt.ts";
export type { Steps } from "./stepLog.ts";
