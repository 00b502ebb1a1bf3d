export { CAUTIONS, DANGERS, DANGERS_IN_SHORT } from "./cautions.ts";
export { chartFiles, fitChartFiles } from "./chartFiles.ts";
export { chartTables } from "./chartTables.ts";
export { type ReportOptions, renderDayReport, renderReport } from "./renderReport.ts";
export { serverDocument } from "./serverDocument.ts";
