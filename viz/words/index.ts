export { answer } from "./answer.ts";
export { bestWords, type Ranking, ranking } from "./bestWords.ts";
export { CAUSE_KINDS, causeWords } from "./causeWords.ts";
export { type DifferenceWords, differenceEnds, differenceWords } from "./differenceWords.ts";
export { type EstimateWords, estimateWords } from "./estimateWords.ts";
export { fitTestWords } from "./fitTestWords.ts";
export { goalFormat, usesWords } from "./goalWords.ts";
export { differenceIn, furthestVariant, headline, isSingleDay } from "./headline.ts";
export {
  headsWords,
  STOP_CAUSES,
  stopDefinition,
  stopEndWords,
  stopReasonWords,
  waitWords,
} from "./killStopWords.ts";
export { observationNoun, observationsOf, observationsWords } from "./observations.ts";
export { overtimeWords } from "./overtimeWords.ts";
export { OWN_TIME_WORDS, WORK_IN_HAND_WORDS } from "./ownTimeWords.ts";
export { quoted } from "./quoted.ts";
export { type ResponseFormat, responseFormat } from "./responseFormat.ts";
export { type FactorEffect, rankedEffects, screeningWords } from "./screeningWords.ts";
export { limitShareWords, shareWords } from "./shareWords.ts";
export { shownWords } from "./shownWords.ts";
export { rankedSlopes, slopeName, withheldWords } from "./slopeWords.ts";
export { stepWords } from "./stepWords.ts";
export { studyFormat } from "./studyFormat.ts";
export { welfareLead } from "./welfareLead.ts";
export { shareEstimate, spanEstimate, timesEstimate, WHY_NOTE, whyWords } from "./whyWords.ts";
