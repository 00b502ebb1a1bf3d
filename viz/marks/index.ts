// Small drawings from columns

export { drawLevelInterval, drawUprightInterval, type Ends, type IntervalStyle } from "./drawInterval.ts";
export { drawKey } from "./drawKey.ts";
export { drawLineKey, type LineSample } from "./drawLineKey.ts";
export { drawTrace, type TraceColumns } from "./drawTrace.ts";
export { drawTwoTone, type TwoTone, type TwoToneFills } from "./drawTwoTone.ts";
export { stepBandPath, stepPath } from "./stepPaths.ts";
