// One file a picture: columns, how they come from results, drawing

export { type BindingColumns, type BindingRow, bindingChart, bindingView } from "./binding.ts";
export { type BottleneckColumns, type BottleneckSpan, bottleneckChart, bottleneckView } from "./bottleneck.ts";
export { type ChillerColumns, type ChillerPanel, chillerChart, chillersOf, chillerView } from "./chiller.ts";
export { type CostColumns, type CostEnds, type CostPoint, costChart, costView } from "./cost.ts";
export { type CrewColumns, type CrewPanel, crewChart, crewView } from "./crew.ts";
export { type CurveColumns, type CurvePoint, curveChart, curveView } from "./curve.ts";
export { type HeadsLine, type HeadsOutColumns, headsOutChart, headsOutView } from "./headsOut.ts";
export { type HeatMapCell, type HeatMapColumns, heatMapChart, heatMapView } from "./heatMap.ts";
export { type HistogramColumns, histogramChart, histogramView } from "./histogram.ts";
export { type KillStopColumns, type KillStopRow, killStopChart, killStopView } from "./killStop.ts";
export { type LimitColumns, limitChart, limitView } from "./limit.ts";
export { type LoadColumns, type LoadRow, loadChart, loadView } from "./load.ts";
export { type MassColumns, type MassFlow, massChart, massView } from "./mass.ts";
export { type ObservedColumns, type ObservedStretch, observedChart, observedView } from "./observed.ts";
export { type ProbabilityColumns, probabilityChart, probabilityView } from "./probability.ts";
export { type QueueColumns, type QueuePanel, queueChart, queueView } from "./queue.ts";
export { type ScreeningColumns, type ScreeningPoint, screeningChart, screeningView } from "./screening.ts";
export { type SlopeColumns, type SlopeRow, slopeChart, slopeView } from "./slope.ts";
export { type StateColumns, type StateRow, stateChart, stateView } from "./state.ts";
export { type WipColumns, type WipSection, wipChart, wipView } from "./wip.ts";

// Pictures in several files, tables of their figures, and what they share

export { type BinnedTrace, binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
export { type Cell, type ChartTable, quantityCell, quantityUnit } from "./chartTable.ts";
export {
  bottleneckReadings,
  chillerReadings,
  crewReadings,
  headsOutReadings,
  killStopReadings,
  loadReadings,
  queueReadings,
  stateReadings,
  wipReadings,
} from "./dayReadings.ts";
export {
  bindingTable,
  bottleneckTable,
  killStopTable,
  limitTable,
  loadTable,
  massTable,
  slopeTable,
  stateTable,
} from "./dayTables.ts";
export { type DifferenceColumns, type DifferenceRow, differenceChart } from "./difference.ts";
export { type InputRow, inputRows } from "./inputRows.ts";
export { resampled } from "./resampled.ts";
export { type ResponseColumns, type ResponseRow, responseChart } from "./response.ts";
export { differenceView, responseView } from "./responseView.ts";
export { spansOfStages } from "./spansOfStages.ts";
export { costTable, curveTable, differenceTable, heatMapTable, responseTable, screeningTable } from "./studyTables.ts";
export type { TimeReadings, TimeSeries, TimeSpans } from "./timeReadings.ts";
export { timeTable } from "./timeTable.ts";
export { tradeOffView } from "./tradeOffView.ts";
export { worthView } from "./worthView.ts";

// Columns that several pictures share

export type { TraceColumns } from "../marks/index.ts";
