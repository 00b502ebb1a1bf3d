// A day: results -> columns

// Helpers
export { type BinnedTrace, binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
// A study: results -> columns
export { curveView } from "./curveView.ts";
export { headsOutView } from "./headsOutView.ts";
export { limitView } from "./limitView.ts";
export { queueView } from "./queueView.ts";
export { differenceView, responseView } from "./responseView.ts";
export { screeningView } from "./screeningView.ts";
export { stateView } from "./stateView.ts";
export { wipView } from "./wipView.ts";
