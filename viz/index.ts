// Study results -> files

export { type ChartContext, svgText, type ThemeName } from "./frame/index.ts";
// Study results -> columns -> pictures
export * from "./pictures/index.ts";
export * from "./pictures/index.ts";
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
  welfareLead,
  whyWords,
  withheldWords,
} from "./words/index.ts";
