/** Results -> one HTML page, and what else a run folder holds of pictures. */

// Pages

export { type CalibrationReport, renderCalibrationReport } from "./calibrationReport.ts";
export { type DoubtReport, renderDoubtReport } from "./doubtReport.ts";
export { type FitReport, renderFitReport } from "./fitReport.ts";
export { type LayoutReport, layoutVerdict, renderLayoutReport } from "./layoutReport.ts";
export { type ReportOptions, renderDayReport, renderReport } from "./renderReport.ts";

// The dossier of a demand

export {
  type DossierDocument,
  dossierDocuments,
  dossierDrawing,
  dossierTables,
} from "./dossier/dossierDocuments.ts";
export { ownerLines } from "./dossier/ownerWords.ts";
export type { DossierTable } from "./dossier/tables.ts";

// Pictures and their figures as files

export { chartFiles, doubtChartFiles, fitChartFiles } from "./chartFiles.ts";
export { chartTables } from "./chartTables.ts";

// What every page says

export { CAUTIONS, DANGERS, DANGERS_IN_SHORT } from "./cautions.ts";

// To draw into where there is no browser

export { serverDocument } from "./serverDocument.ts";
