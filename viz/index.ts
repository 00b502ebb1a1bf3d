// Study results -> files

// Study results -> columns -> pictures
export * from "./charts/index.ts";
export { type ChartContext, svgText, type ThemeName } from "./frame/index.ts";
export {
  CAUTIONS,
  chartFiles,
  chartTables,
  DANGERS,
  DANGERS_IN_SHORT,
  fitChartFiles,
  renderDayReport,
  renderReport,
  serverDocument,
} from "./report/index.ts";
export * from "./views/index.ts";
// Study results -> sentences
export {
  answer,
  differenceWords,
  estimateWords,
  rankedSlopes,
  ranking,
  responseFormat,
  slopeName,
  timesEstimate,
  WHY_NOTE,
  whyWords,
  withheldWords,
} from "./words/index.ts";
