// One file a picture: columns, how they come from results, drawing, table, what it shows at an instant

export { type BindingColumns, type BindingRow, bindingChart, bindingTable, bindingView } from "./binding.ts";
export {
  type BottleneckColumns,
  type BottleneckSpan,
  bottleneckChart,
  bottleneckReadings,
  bottleneckTable,
  bottleneckView,
} from "./bottleneck.ts";
export { type ChancesColumns, chancesChart, chancesTable, chancesView } from "./chances.ts";
export {
  type ChillerColumns,
  type ChillerPanel,
  chillerChart,
  chillerReadings,
  chillersOf,
  chillerView,
} from "./chiller.ts";
export { type CostColumns, type CostPoint, costChart, costTable, costView, tradeOffView } from "./cost.ts";
export { type CrewColumns, type CrewPanel, crewChart, crewReadings, crewView } from "./crew.ts";
export { type CurveColumns, type CurvePoint, curveChart, curveTable, curveView } from "./curve.ts";
export {
  type DifferenceColumns,
  type DifferenceRow,
  differenceChart,
  differenceTable,
  differenceView,
  worthView,
} from "./difference.ts";
export { type HeadsLine, type HeadsOutColumns, headsOutChart, headsOutReadings, headsOutView } from "./headsOut.ts";
export { type HeatMapCell, type HeatMapColumns, heatMapChart, heatMapTable, heatMapView } from "./heatMap.ts";
export { type HistogramColumns, histogramChart, histogramView } from "./histogram.ts";
export {
  type KillStopColumns,
  type KillStopRow,
  killStopChart,
  killStopReadings,
  killStopTable,
  killStopView,
} from "./killStop.ts";
export { LAYOUT_CAUTION, type LayoutSheet, layoutChart, layoutSheet, layoutTable } from "./layout.ts";
export { type LimitColumns, limitChart, limitTable, limitView } from "./limit.ts";
export { type LoadColumns, type LoadRow, loadChart, loadReadings, loadTable, loadView } from "./load.ts";
export { type MassColumns, type MassFlow, massChart, massTable, massView } from "./mass.ts";
export { type ObservedColumns, type ObservedStretch, observedChart, observedView } from "./observed.ts";
export { type ProbabilityColumns, probabilityChart, probabilityView } from "./probability.ts";
export { type QueueColumns, type QueuePanel, queueChart, queueReadings, queueView } from "./queue.ts";
export { type ResponseColumns, type ResponseRow, responseChart, responseTable, responseView } from "./response.ts";
export {
  type ScreeningColumns,
  type ScreeningPoint,
  screeningChart,
  screeningTable,
  screeningView,
} from "./screening.ts";
export { type SeasonColumns, seasonChart, seasonChartTable, seasonView } from "./season.ts";
export { type SlopeColumns, type SlopeRow, slopeChart, slopeTable, slopeView } from "./slope.ts";
export { type SpansColumns, spansChart, spansTable, spansView } from "./spans.ts";
export { type StateColumns, type StateRow, stateChart, stateReadings, stateTable, stateView } from "./state.ts";
export { type TornadoColumns, tornadoChart, tornadoTable, tornadoView } from "./tornado.ts";
export { weekBoardChart, weekBoardTable } from "./weekBoard.ts";
export type {
  BoardCrewDay,
  BoardDay,
  BoardFill,
  BoardLot,
  BoardOrder,
  WeekBoardColumns,
} from "./weekBoardColumns.ts";
export { weekBoardViews } from "./weekBoardView.ts";
export { type WipColumns, type WipSection, wipChart, wipReadings, wipView } from "./wip.ts";

// What several pictures share

export type { TraceColumns } from "../marks/index.ts";
export { type BinnedTrace, binnedTrace, drawingBinSeconds } from "./binnedTrace.ts";
export { type Cell, type ChartTable, quantityCell, quantityUnit } from "./chartTable.ts";
export { resampled, type TimeReadings, type TimeSeries, type TimeSpans, timeTable } from "./timeReadings.ts";

// The figures of a plan, each with its source

export { type InputRow, inputRows } from "./inputRows.ts";
