import { type Cell, csvText } from "./csvText.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "./studyResults.ts";

const COLUMNS = [
  ...["response", "label", "unit", "n", "mean", "low", "high", "sd", "min", "max"],
  ...["difference", "difference_low", "difference_high", "difference_n", "relative_low", "relative_high", "shown"],
  "confidence",
];

/**
 * One row per variant and response: estimate and interval, paired difference to the base case and its interval, and
 * whether the interval leaves 0 out ("yes", "no"; empty for the base and where there is nothing to compare).
 * One column per factor of the study holds its level in this variant.
 */
export function summaryCsv(results: StudyResults): string {
  const header = ["variant", ...results.factors.map((factor) => `factor: ${factor.name}`), ...COLUMNS];
  const rows = results.variants.flatMap((variant) =>
    results.responses.map((response) => [
      variant.name,
      ...levelsOf(results, variant),
      ...estimateCells(variant, response),
      ...differenceCells(variant, response),
      results.study.confidence,
    ]),
  );
  return csvText(header, rows);
}

function levelsOf(results: StudyResults, variant: VariantResults): Cell[] {
  return results.factors.map((factor, index) => factor.levels[variant.levels[index] ?? -1] ?? null);
}

function estimateCells(variant: VariantResults, { key, label, unit }: ResponseInfo): Cell[] {
  const found = variant.estimates[key];
  if (found === undefined) return [key, label, unit, 0, null, null, null, null, null, null];
  const { n, mean, low, high, min, max } = found;
  return [key, label, unit, n, mean, low, high, n < 2 ? null : found.sd, min, max];
}

function differenceCells(variant: VariantResults, { key }: ResponseInfo): Cell[] {
  const found = variant.differences?.[key];
  if (found === undefined) return [null, null, null, null, null, null, null];
  const { mean, low, high, n, relativeLow, relativeHigh, shown } = found;
  return [mean, low, high, n, relativeLow, relativeHigh, shown ? "yes" : "no"];
}
