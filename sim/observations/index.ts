/** Day record -> measures. */

// Values as words
export { formatRange, formatResponse, formatSpan } from "./formatResponse.ts";
// One day's values
export { measure } from "./measure.ts";
// What can be measured
export type { ResponseInfo } from "./responseInfo.ts";
export { responsesOf } from "./responsesOf.ts";
export { usualResponses } from "./usualResponses.ts";
