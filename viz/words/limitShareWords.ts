import { formatConfidence } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { observationNoun } from "./observations.ts";
import { responseFormat } from "./responseFormat.ts";

/**
 * "8.7 % outside the limit (8.1 to 9.4 % at 95 %, 40 simulated days)": the share of heads outside a limit over all days of a
 * variant. Where none was seen, how many there may be all the same; where the study did not ask for it, that.
 */
export function limitShareWords(results: StudyResults, { estimates }: VariantResults, limit: string): string {
  const key = `beyond.${limit}`;
  const info = results.responses.find((response) => response.key === key);
  if (info === undefined) return "Not among the results that this study asks for";
  const found = estimates[key];
  if (found === undefined) return "No head was timed on any day";
  const { n, mean, low, high, halfWidth } = found;
  const { value, range } = responseFormat(info, 0);
  if (low === null || high === null) return `${value(mean, null)} outside the limit on one simulated day`;
  const at = formatConfidence(results.study.confidence);
  const days = `${n} ${observationNoun(results)}`;
  if (mean === 0) return `None outside the limit in ${days} (at most ${value(high, high)} at ${at})`;
  return `${value(mean, halfWidth)} outside the limit (${range(low, high, halfWidth)} at ${at}, ${days})`;
}
