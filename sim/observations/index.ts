/** Day record -> measures. */

// Values as words
export { formatRange, formatResponse, formatSpan } from "./formatResponse.ts";
// One day's values
export { measure } from "./measure.ts";
// Overall equipment effectiveness, for other figures than a day's
export { type Oee, type OeeElements, oee } from "./oee.ts";
// What can be measured
export type { ResponseInfo } from "./responseInfo.ts";
export { responsesOf } from "./responsesOf.ts";
export { usualResponses } from "./usualResponses.ts";
