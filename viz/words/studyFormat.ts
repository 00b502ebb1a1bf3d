import type { Estimate, ResponseInfo, StudyResults } from "../contract.ts";
import { differenceIn } from "./headline.ts";
import { type ResponseFormat, responseFormat } from "./responseFormat.ts";

/** The format of a response as one study writes it: the same units in every variant, table and picture. */
export function studyFormat(results: StudyResults, info: ResponseInfo): ResponseFormat {
  const values = results.variants.map((variant) => variant.estimates[info.key]);
  const differences = results.variants.map((variant) => differenceIn(variant, info.key));
  const startClockSeconds = results.variants[0]?.day.startClockSeconds ?? 0;
  return responseFormat(info, startClockSeconds, { value: largestOf(values), difference: largestOf(differences) });
}

function largestOf(estimates: readonly (Estimate | undefined)[]): number {
  const ends = estimates.flatMap((estimate) =>
    estimate ? [estimate.mean, estimate.low ?? 0, estimate.high ?? 0] : [],
  );
  return Math.max(0, ...ends.map(Math.abs).filter(Number.isFinite));
}
