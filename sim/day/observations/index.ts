/** Day record -> measures. */

// What a day's end was owed to
export { boundKey, needsBinding } from "./binding/bindingKeys.ts";
export { bindingKeys } from "./binding/bindingResponses.ts";
export { boundCells } from "./binding/boundCells.ts";
export { bottleneckKey, boundLabel, shareKey, TOTAL_KEY } from "./binding/boundResponses.ts";
export { boundTotal } from "./binding/boundSeconds.ts";
export { slopeIn, slopeKey, slopeLabel } from "./binding/slopeResponses.ts";
export { PARAMETERS, type Parameter, type Slope, slopesOf, slopesThatHold } from "./binding/slopes.ts";
// What a day cost, without and with the plant
export { capitalPerDay, capitals } from "./costs.ts";
export { type CostSheet, costSheet } from "./costSheet.ts";
// What shares of time are taken over
export { WORK_IN_HAND } from "./crewResponses.ts";
// Values as words
export { dayNotes } from "./dayNotes.ts";
export { killLineKeys, killStopResponses, needsKillStops } from "./killStopResponses.ts";
// One day's values
export { type MassBalance, type MassLine, massBalance } from "./massBalance.ts";
export { measure, measurer } from "./measure.ts";
// Overall equipment effectiveness, for other figures than a day's
export { type Oee, type OeeElements, oee } from "./oee.ts";
// What can be measured
export type { ResponseInfo } from "./responseInfo.ts";
export { responsesOf } from "./responsesOf.ts";
export { OWN_TIME, ownShare } from "./stageResponses.ts";
export { supportOf } from "./supportOf.ts";
export { usualResponses } from "./usualResponses.ts";
export { type UtilitySheet, utilitySheet } from "./utilitySheet.ts";
