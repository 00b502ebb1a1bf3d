// Small drawings from columns

export { drawFootnote } from "./drawFootnote.ts";
export { drawLevelInterval, drawUprightInterval, type IntervalStyle } from "./drawInterval.ts";
export { drawKey } from "./drawKey.ts";
export { drawTrace, type TraceColumns } from "./drawTrace.ts";
export { stepBandPath } from "./stepBandPath.ts";
export { stepPath } from "./stepPath.ts";
