import type { Estimate, ResponseInfo, StudyResults } from "../contract.ts";
import { differenceEnds } from "./differenceWords.ts";
import { differenceIn } from "./headline.ts";
import { periodNoun } from "./observations.ts";
import { type ResponseFormat, responseFormat } from "./responseFormat.ts";

/** The format of a response as one study writes it: the same units in every variant, table and picture. */
export function studyFormat(results: StudyResults, info: ResponseInfo): ResponseFormat {
  const values = results.variants.map((variant) => variant.estimates[info.key]);
  const differences = results.variants.map((variant) => {
    const difference = differenceIn(variant, info.key);
    return difference && { ...difference, ...differenceEnds(difference) };
  });
  const startClockSeconds = results.variants[0]?.day.startClockSeconds ?? 0;
  const largest = { value: largestOf(values), difference: largestOf(differences) };
  return responseFormat(info, startClockSeconds, largest, periodNoun(results));
}

function largestOf(estimates: readonly (Estimate | undefined)[]): number {
  let largest = 0;
  for (const estimate of estimates) {
    for (const end of [estimate?.mean, estimate?.low, estimate?.high]) {
      if (Number.isFinite(end)) largest = Math.max(largest, Math.abs(end!));
    }
  }
  return largest;
}
