// Pictures of a day

// Pictures of a study
export { type CurveColumns, type CurvePoint, curveChart } from "./curveChart.ts";
export { type DifferenceColumns, type DifferenceRow, differenceChart } from "./differenceChart.ts";
export { type HeadsLine, type HeadsOutColumns, headsOutChart } from "./headsOutChart.ts";
export { type LimitColumns, limitChart } from "./limitChart.ts";
export { type QueueColumns, type QueuePanel, queueChart, type TraceColumns } from "./queueChart.ts";
export { type ResponseColumns, type ResponseRow, responseChart } from "./responseChart.ts";
export { type ScreeningColumns, type ScreeningPoint, screeningChart } from "./screeningChart.ts";
export { type StateColumns, type StateRow, stateChart } from "./stateChart.ts";
export { type WipColumns, type WipSection, wipChart } from "./wipChart.ts";
