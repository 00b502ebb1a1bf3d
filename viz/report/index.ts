// Pages

export { type ReportOptions, renderDayReport, renderReport } from "./renderReport.ts";

// Pictures and their figures as files

export { chartFiles } from "./chartFiles.ts";
export { chartTables } from "./chartTables.ts";
export { fitChartFiles } from "./fitChartFiles.ts";

// What every page says

export { CAUTIONS, DANGERS, DANGERS_IN_SHORT } from "./cautions.ts";

// To draw into where there is no browser

export { serverDocument } from "./serverDocument.ts";
