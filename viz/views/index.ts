// A day: results -> columns

// Helpers
export { bindingView } from "./bindingView.ts";
export { type BinnedTrace, binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
export { bottleneckView } from "./bottleneckView.ts";
export { chillersOf, chillerView } from "./chillerView.ts";
// A study: results -> columns
export { costView } from "./costView.ts";
export { crewView } from "./crewView.ts";
export { curveView } from "./curveView.ts";
export { headsOutView } from "./headsOutView.ts";
export { heatMapView } from "./heatMapView.ts";
// Measured times: fit -> columns
export { histogramView } from "./histogramView.ts";
// A plan file -> its figures with their sources
export { type InputRow, inputRows } from "./inputRows.ts";
export { killStopView } from "./killStopView.ts";
export { limitView } from "./limitView.ts";
export { loadView } from "./loadView.ts";
export { massView } from "./massView.ts";
// Observed days against simulated ones
export { observedView } from "./observedView.ts";
export { probabilityView } from "./probabilityView.ts";
export { queueView } from "./queueView.ts";
export { differenceView, responseView } from "./responseView.ts";
export { screeningView } from "./screeningView.ts";
export { slopeView } from "./slopeView.ts";
export { stateView } from "./stateView.ts";
export { tradeOffView } from "./tradeOffView.ts";
export { wipView } from "./wipView.ts";
export { worthView } from "./worthView.ts";
