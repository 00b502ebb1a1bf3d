// Columns that several pictures share
export type { TraceColumns } from "../marks/index.ts";
// Pictures of a day
export { type BindingColumns, type BindingRow, bindingChart } from "./bindingChart.ts";
export { type BottleneckColumns, type BottleneckSpan, bottleneckChart } from "./bottleneckChart.ts";
export { type ChillerColumns, type ChillerPanel, chillerChart } from "./chillerChart.ts";
// Pictures of a study
export { type CostColumns, type CostEnds, type CostPoint, costChart } from "./costChart.ts";
export { type CrewColumns, type CrewPanel, crewChart } from "./crewChart.ts";
export { type CurveColumns, type CurvePoint, curveChart } from "./curveChart.ts";
export { type DifferenceColumns, type DifferenceRow, differenceChart } from "./differenceChart.ts";
export { type HeadsLine, type HeadsOutColumns, headsOutChart } from "./headsOutChart.ts";
export { type HeatMapCell, type HeatMapColumns, heatMapChart } from "./heatMapChart.ts";
// Pictures of measured times
export { type HistogramColumns, histogramChart } from "./histogramChart.ts";
export { type KillStopColumns, type KillStopRow, killStopChart } from "./killStopChart.ts";
export { type LimitColumns, limitChart } from "./limitChart.ts";
export { type LoadColumns, type LoadRow, loadChart } from "./loadChart.ts";
export { type MassColumns, type MassFlow, massChart } from "./massChart.ts";
// Observed days against simulated ones
export { type ObservedColumns, type ObservedStretch, observedChart } from "./observedChart.ts";
export { type ProbabilityColumns, probabilityChart } from "./probabilityChart.ts";
export { type QueueColumns, type QueuePanel, queueChart } from "./queueChart.ts";
export { type ResponseColumns, type ResponseRow, responseChart } from "./responseChart.ts";
export { type ScreeningColumns, type ScreeningPoint, screeningChart } from "./screeningChart.ts";
export { type SlopeColumns, type SlopeRow, slopeChart } from "./slopeChart.ts";
export { spansOfStages } from "./spansOfStages.ts";
export { type StateColumns, type StateRow, stateChart } from "./stateChart.ts";
export { type WipColumns, type WipSection, wipChart } from "./wipChart.ts";
