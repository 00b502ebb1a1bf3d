export { answer, quoted } from "./answer.ts";
export { confidenceWords } from "./confidenceWords.ts";
export { type DifferenceWords, differenceWords } from "./differenceWords.ts";
export { type EstimateWords, estimateWords } from "./estimateWords.ts";
export { differenceIn, furthestVariant, headline, isSingleDay } from "./headline.ts";
export { type ResponseFormat, responseFormat } from "./responseFormat.ts";
export { shareWords } from "./shareWords.ts";
export { spanWords } from "./spanWords.ts";
export { studyFormat } from "./studyFormat.ts";
