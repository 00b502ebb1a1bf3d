import { formatConfidence, formatDecimals } from "../../sim/text/units/index.ts";
import type { StudyResults, VariantResults } from "../contract.ts";
import { observationNoun, periodNoun } from "./observations.ts";
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
  if (low === null || high === null)
    return `${value(mean, null)} outside the limit ${periodNoun(results) === "day" ? "on one simulated day" : "in one simulated week"}`;
  const at = formatConfidence(results.study.confidence);
  const days = `${n} ${observationNoun(results)}`;
  if (mean === 0) return `None outside the limit in ${days} (at most ${value(high, high)} at ${at})`;
  return `${value(mean, halfWidth)} outside the limit (${range(low, high, halfWidth)} at ${at}, ${days})`;
}

/**
 * "2.4 % (113 of 4 730 heads)". Never rounded to 0 % or 100 % unless it is none or all: "none of 4 730 heads",
 * "under 0.01 % (1 of 1 000 000 heads)".
 */
export function shareWords(part: number, whole: number, things: string): string {
  if (whole === 0) return `no ${things}`;
  if (part === 0) return `none of ${formatDecimals(whole, 0)} ${things}`;
  return `${percentWords(part, whole)} (${formatDecimals(part, 0)} of ${formatDecimals(whole, 0)} ${things})`;
}

function percentWords(part: number, whole: number): string {
  const percent = (100 * part) / whole;
  if (part === whole) return "100 %";
  if (percent < 0.005) return "under 0.01 %";
  if (percent > 99.995) return "over 99.99 %";
  const decimals = percent < 0.1 || percent > 99.5 ? 2 : percent < 10 ? 1 : 0;
  return `${formatDecimals(percent, decimals)} %`;
}
