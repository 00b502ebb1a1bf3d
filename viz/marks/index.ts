export { drawLevelInterval, drawUprightInterval, type IntervalStyle } from "./drawInterval.ts";
export { stepBandPath } from "./stepBandPath.ts";
export { stepPath } from "./stepPath.ts";
