import type { Factor } from "../../asked/study/index.ts";
import { clockCells, clockColumns } from "./clockCells.ts";
import {
  type Column,
  column,
  RESPONSE_COLUMN,
  UNIT_COLUMN,
  UNIT_OF_ROW,
  UNIT_OF_SPAN,
  VARIANT_COLUMN,
} from "./column.ts";
import { type CsvCell, csvParts, headerOf } from "./csvText.ts";
import { factorColumn } from "./factorColumn.ts";
import type { ResponseInfo, StudyResults, VariantResults } from "./studyResults.ts";
import { levelsOf } from "./valueRows.ts";

const SHARE = "share of the mean of today's plan";

/** Columns of summary.csv: one for each factor of the study among them. */
export function summaryColumns(factors: readonly Factor[]): Column[] {
  return [VARIANT_COLUMN, ...factors.map(factorColumn), ...FIXED_COLUMNS];
}

const INTERVAL =
  "the mean's confidence interval (Student t, cut off at 0 for times and amounts; Student t of the logit for shares, or the exact interval of the share of days where none or all was seen); empty below two observations.";

const FIXED_COLUMNS = [
  RESPONSE_COLUMN,
  column("label", "text", "", "The response in words."),
  UNIT_COLUMN,
  column("days", "whole number", "days", "Number of simulated days of the variant."),
  column(
    "n",
    "whole number",
    "observations",
    "Number of observations with a value, on which mean and interval rest: days, or antithetic pairs of days.",
  ),
  column("mean", "number", UNIT_OF_ROW, "Estimate of the mean."),
  column("low", "number", UNIT_OF_ROW, `Lower end of ${INTERVAL}`),
  column("high", "number", UNIT_OF_ROW, `Upper end of ${INTERVAL}`),
  ...clockColumns("mean_", "The mean where it is a time of day"),
  column("sd", "number", UNIT_OF_SPAN, "Standard deviation of the observations; empty below two of them."),
  column("min", "number", UNIT_OF_ROW, "Smallest observation."),
  column("max", "number", UNIT_OF_ROW, "Largest observation."),
  column(
    "difference",
    "number",
    UNIT_OF_SPAN,
    "Mean paired difference to today's plan (the base); empty for today's plan itself.",
  ),
  column("difference_low", "number", UNIT_OF_SPAN, "Lower end of the difference's confidence interval."),
  column("difference_high", "number", UNIT_OF_SPAN, "Upper end of the difference's confidence interval."),
  column("difference_n", "whole number", "pairs", "Number of pairs that the difference rests on."),
  column("relative_low", "number", SHARE, "Lower end of the difference's interval, relative to today's plan."),
  column("relative_high", "number", SHARE, "Upper end of the difference's interval, relative to today's plan."),
  column("p", "number", "probability", "Two-sided p-value of the difference by itself."),
  column("holm_p", "number", "probability", "The same by Holm's method, for all variants of the response at once."),
  column(
    "joint_low",
    "number",
    UNIT_OF_SPAN,
    "Lower end of the interval that allows for all variants of the response (Bonferroni; false coverage rate where the error rate is 'false discovery').",
  ),
  column(
    "joint_high",
    "number",
    UNIT_OF_SPAN,
    "Upper end of the interval that allows for all variants of the response (Bonferroni; false coverage rate where the error rate is 'false discovery').",
  ),
  column(
    "shown",
    "yes or no",
    "",
    "Whether a difference is shown: its interval, the one for the study's error rate, leaves 0 out; empty for today's plan.",
  ),
  column("best_gap", "number", UNIT_OF_SPAN, "Mean minus the best mean among the others, where a direction is wanted."),
  column("best_low", "number", UNIT_OF_SPAN, "Lower end of that gap's interval, for all variants at once."),
  column("best_high", "number", UNIT_OF_SPAN, "Upper end of that gap's interval, for all variants at once."),
  column("may_be_best", "yes or no", "", "Whether the variant may be as good as the best, for all variants at once."),
  column("confidence", "number", "probability", "Two-sided confidence of the intervals."),
];

/**
 * One row per variant and response, in parts: estimate and interval, paired difference to today's plan and its interval, and
 * whether the interval leaves 0 out ("yes", "no"; empty for the base and where there is nothing to compare).
 * One column per factor of the study holds its level in this variant.
 */
export function summaryCsv(results: StudyResults): Generator<string> {
  return csvParts(headerOf(summaryColumns(results.factors)), rows(results));
}

function* rows(results: StudyResults): Generator<CsvCell[]> {
  for (const variant of results.variants) {
    for (const response of results.responses) {
      yield [
        variant.name,
        ...levelsOf(results, variant),
        ...estimateCells(variant, response),
        ...differenceCells(variant, response),
        ...bestCells(variant, response),
        results.study.confidence,
      ];
    }
  }
}

function estimateCells(
  { estimates, days, day }: VariantResults,
  { key, label, unit, format }: ResponseInfo,
): CsvCell[] {
  const found = estimates[key];
  if (found === undefined) return [key, label, unit, days, 0, ...new Array<CsvCell>(8).fill(null)];
  const { n, mean, low, high, min, max } = found;
  const clock = clockCells(format === "clock" ? day.startClockSeconds + mean : null);
  return [key, label, unit, days, n, mean, low, high, ...clock, n < 2 ? null : found.sd, min, max];
}

function differenceCells(variant: VariantResults, { key }: ResponseInfo): CsvCell[] {
  const found = variant.differences?.[key];
  if (found === undefined) return Array.from({ length: 11 }, () => null);
  const { mean, low, high, n, relativeLow, relativeHigh, p, holmP, familyLow, familyHigh, shown } = found;
  return [mean, low, high, n, relativeLow, relativeHigh, p, holmP, familyLow, familyHigh, shown ? "yes" : "no"];
}

function bestCells({ againstBest }: VariantResults, { key }: ResponseInfo): CsvCell[] {
  const found = againstBest?.[key];
  if (found === undefined) return [null, null, null, null];
  return [found.gap, found.low, found.high, found.mayBeBest ? "yes" : "no"];
}
