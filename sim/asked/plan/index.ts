// The plan: plain data in SI units

export * from "./plan.ts";

// Its building and services

export {
  BY_PRODUCT_CATEGORIES,
  type ByProductCategory,
  LINE_ROOMS,
  type LineRoom,
  SITE_FIGURES,
  type Site,
  type SiteFigureInfo,
  type SiteKey,
  siteFigure,
  siteGroups,
} from "./site.ts";

// Reading plan files

export { type Fault, formatFault } from "./fault.ts";
export { type ParsedJson, parseJson } from "./parseJson.ts";
export { PARSING } from "./parsing.ts";
export { CRATE_STEP_NAMES, CRATE_STEPS } from "./parts/crateStepNames.ts";
export { stopsOf } from "./parts/rotation.ts";
export { planJsonSchema } from "./planJsonSchema.ts";
export { type PlanReading, readPlan } from "./readPlan.ts";
export { NO_FILES, type TextFiles } from "./textFiles.ts";

// What is sold, and what the line takes off

export { keptParts } from "./presentation/keptParts.ts";
export { chillLossNames, leftBefore, lineYield, massAlong, type TakenOff } from "./presentation/massAlong.ts";
export { presentationWords, publishedName } from "./presentation/presentationWords.ts";
export { publishedYield } from "./presentation/publishedYield.ts";

// How planned stops fit places and times

export { meanDayEnd } from "./stops/meanDay.ts";
export {
  breaksOverlap,
  costsMoreThanPlanned,
  plannedStopSeconds,
  type StopFit,
  type StopGap,
  stopFit,
} from "./stops/stopFit.ts";
export { staggerWords, stopGapWords } from "./stops/stopWords.ts";
export { flowWarnings } from "./warnings/planWarnings.ts";
export { type StunnedProtection, stunnedProtection } from "./warnings/stunnedProtection.ts";

// For files that speak of plans

export { formatPath } from "./formatPath.ts";
export { type InputKind, inputKind } from "./inputKind.ts";
export { isRecord } from "./isRecord.ts";
export { listWords } from "./listWords.ts";
export { carriedBy, mapWork, pacedIn, stationsIn, type Work } from "./mapWork.ts";
export { filesBeside, namedPlan } from "./namedPlan.ts";
export { nearestName, nearestWords } from "./nearestName.ts";
export { type PathStep, parsePath } from "./parsePath.ts";
export { readDate } from "./readDate.ts";
export { readNamedFile } from "./readNamedFile.ts";
export { type Place, type Resolved, resolvePath } from "./resolvePath.ts";
export { expandedLoadNames } from "./rules/expandedLoadNames.ts";
export { breakdowns, stationBreakdowns } from "./schema/breakdowns.ts";
export { money } from "./schema/money.ts";
export { amount as moneyAmount, pay, price as moneyPrice } from "./schema/moneyText.ts";
export { presentation } from "./schema/presentation.ts";
export { clock, quantity, quantityAboveZero, readBy, share, shareAboveZero } from "./schema/readBy.ts";
export { oneKeyOf, record } from "./schema/record.ts";
export { site } from "./schema/site.ts";
export { freeText, name, reference, saidText } from "./schema/text.ts";
export { type VaryingQuantities, varyingQuantities } from "./schema/varying.ts";
export { whole } from "./schema/whole.ts";
export { noPath, setPathInPlace } from "./setPath.ts";
export { soundKeys } from "./soundKeys.ts";
export { tellable } from "./tellable.ts";
export { calledFigure, type TimedFigure } from "./uncertain/calledFigure.ts";
export { factorsAt } from "./uncertain/factorsAt.ts";
export { type FactoredFigure, inWorld } from "./uncertain/inWorld.ts";
export { type FigureSpread, spreadAt } from "./uncertain/spreadAt.ts";
export { dayJson } from "./week/dayJson.ts";
export { zodFaults } from "./zodFaults.ts";
