/** Day record -> measures. */

// What can be measured

export { type ListedResponse, type ResponseGroup, responseGroups } from "./responseGroups.ts";
export type { ResponseInfo } from "./responseInfo.ts";
export { responsesOf } from "./responsesOf.ts";
export { supportOf } from "./supportOf.ts";
export { dayAndMoneyKeys } from "./usualOfDay.ts";
export { usualResponses } from "./usualResponses.ts";

// One day's values

export { measure, measurer } from "./measure.ts";

// A week's values

export { weekMeasurer } from "./week/weekMeasurer.ts";
export { countedDays, countedRecords } from "./week/weekResponse.ts";
export { weekNeedsBinding } from "./week/weekResponses.ts";

// Values as words

export { dayNotes } from "./dayNotes.ts";

// What a day's end was owed to

export { needsBinding, reasonKey } from "./binding/bindingKeys.ts";
export { bindingKeys } from "./binding/bindingResponses.ts";
export { reasonCells } from "./binding/reasonCells.ts";
export { bottleneckKey, reasonLabel, shareKey, TOTAL_KEY } from "./binding/reasonResponses.ts";
export { accountedSeconds } from "./binding/reasonSeconds.ts";

// How it moves with mean times

export { slopeIn, slopeKey, slopeLabel } from "./binding/slopeResponses.ts";
export { PARAMETERS, type Slope, type SlopeParameter, slopesOf, slopesThatHold } from "./binding/slopes.ts";

// Where heads stood between stunning and sticking

export { killLineKeys, killStopResponses, needsKillStops } from "./killStopResponses.ts";
export { cutShortKeys } from "./week/cutShortResponses.ts";

// What a day cost, used and yielded

export { type CostSheet, costSheet } from "./costSheet.ts";
export { capitalPerDay, capitals } from "./costs.ts";
export { type MassBalance, type MassLine, massBalance } from "./massBalance.ts";
export { type UtilitySheet, utilitySheet } from "./utilitySheet.ts";

// Shares of time, and of what they are taken

export { WORK_IN_HAND } from "./crewResponses.ts";
export { type Oee, type OeeElements, oee } from "./oee.ts";
export { OWN_TIME, ownShare } from "./stageResponses.ts";
