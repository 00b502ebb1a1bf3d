/** The public door of the pictures: study results -> sentences, pictures, pages. The simulator has its own: "gambrel". */

// Pages

export {
  type CalibrationReport,
  type DoubtReport,
  type FitReport,
  type LayoutReport,
  layoutVerdict,
  type ReportOptions,
  renderCalibrationReport,
  renderDayReport,
  renderDoubtReport,
  renderFitReport,
  renderLayoutReport,
  renderReport,
} from "./report/index.ts";

// The dossier of a demand

export {
  type DossierDocument,
  type DossierTable,
  dossierDocuments,
  dossierDrawing,
  dossierTables,
  ownerLines,
} from "./report/index.ts";

// Pictures and their figures as files

export { chartFiles, chartTables, doubtChartFiles, fitChartFiles, serverDocument } from "./report/index.ts";

// Study results -> columns -> pictures

export { type ChartContext, svgText, type ThemeName } from "./frame/index.ts";
export * from "./pictures/index.ts";

// Study results -> sentences

export { CAUTIONS, DANGERS, DANGERS_IN_SHORT } from "./report/index.ts";
export {
  answer,
  type DecisionTable,
  dayTold,
  decisionLines,
  decisionTable,
  differenceWords,
  estimateWords,
  improvementTable,
  offersTable,
  otherResponseWords,
  plansTold,
  rankedSlopes,
  ranking,
  responseFormat,
  seasonTable,
  slopeName,
  timesEstimate,
  WHY_NOTE,
  weekClock,
  weekTold,
  welfareLead,
  whoLacked,
  whyWords,
  withheldWords,
  wrappedLines,
} from "./words/index.ts";
