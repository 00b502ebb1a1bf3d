/** Study results -> sentences. */

// The answer of a study

export { answer } from "./answer.ts";
export { bestWords, type Ranking, ranking } from "./bestWords.ts";
export { type DayTold, dayTold } from "./dayTold.ts";
export { decisionLines, wrappedLines } from "./decisionLines.ts";
export {
  bareUnit,
  type DecisionCell,
  type DecisionTable,
  decisionTable,
  MANY_PLANS,
  plansShown,
  plansTold,
  responseHeading,
  type TableRoom,
} from "./decisionTable.ts";
export {
  doubtName,
  figuresWanted,
  isRate,
  planName,
  shortLabel,
  variantsShown,
  variantTold,
  worldsText,
} from "./doubtFormat.ts";
export { differenceIn, furthestVariant, headline, isSingleDay } from "./headline.ts";
export { improvementTable } from "./improvementTable.ts";
export { offersTable } from "./offersTable.ts";
export { otherResponseWords } from "./otherResponseWords.ts";
export { type FactorEffect, rankedEffects, screeningWords } from "./screeningWords.ts";
export { seasonTable, weeksOf } from "./seasonTable.ts";
export { stepWords } from "./stepWords.ts";
export { dateWords, hoursOf, weekClock, whichDay } from "./weekDay.ts";
export { type WeekTold, weekTold, whoLacked } from "./weekTold.ts";
export { welfareLead } from "./welfareLead.ts";

// Estimates and differences

export { type DifferenceWords, differenceEnds, differenceWords } from "./differenceWords.ts";
export { type EstimateWords, estimateWords } from "./estimateWords.ts";
export { fitTestWords } from "./fitTestWords.ts";
export { observationNoun, observationsOf, observationsWords, periodNoun } from "./observations.ts";
export { type ResponseFormat, responseFormat } from "./responseFormat.ts";
export { shownWords } from "./shownWords.ts";
export { studyFormat } from "./studyFormat.ts";

// Why work ended when it did

export { CAUSE_KINDS, causeWords } from "./causeWords.ts";
export { rankedSlopes, slopeName, withheldWords } from "./slopeWords.ts";
export { shareEstimate, spanEstimate, timesEstimate, WHY_NOTE, whyWords } from "./whyWords.ts";

// What a day shows

export {
  headsWords,
  STOP_CAUSES,
  stopDefinition,
  stopEndWords,
  stopReasonWords,
  waitWords,
} from "./killStopWords.ts";
export { overtimeWords } from "./overtimeWords.ts";
export { OWN_TIME_WORDS, WORK_IN_HAND_WORDS } from "./ownTimeWords.ts";

// Small words

export { goalFormat, usesWords } from "./goalWords.ts";
export { quoted } from "./quoted.ts";
export { limitShareWords, shareWords } from "./shareWords.ts";
