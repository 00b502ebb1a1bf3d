// The figures of each picture as a table
export { type Cell, type ChartTable, quantityCell, quantityUnit } from "./chartTable.ts";
// What a picture over the clock shows at an instant
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
export { resampled } from "./resampled.ts";
export {
  costTable,
  curveTable,
  differenceTable,
  heatMapTable,
  responseTable,
  screeningTable,
} from "./studyTables.ts";
export type { TimeReadings, TimeSeries, TimeSpans } from "./timeReadings.ts";
export { timeTable } from "./timeTable.ts";
