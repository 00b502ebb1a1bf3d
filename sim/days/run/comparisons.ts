import type { Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import { compareWithBest, pairMeans } from "../../maths/statistics/index.ts";
import {
  type AgainstBest,
  comparisonsInWords,
  type Difference,
  periodOf,
  type VariantResults,
} from "../results/index.ts";
import type { ValuesByResponse } from "./meanEstimate.ts";

/** Every two variants are compared for the best one, which grows with the square of their number. */
const MAX_FOR_BEST = 200;

type Compared = Pick<VariantResults, "differences" | "againstBest">;

/**
 * Every variant against the base, as the study's error rate has it, and against the best of the others; one entry per
 * variant. With antithetic days the observations that are compared are means of pairs.
 */
export function comparisons(
  study: Study,
  values: readonly ValuesByResponse[],
  responses: readonly ResponseInfo[],
): Compared[] {
  const { procedure } = study;
  const observed = (key: string) => values.map((each) => (procedure.antithetic ? pairMeans(each[key]!) : each[key]!));
  const picked = procedure.selection !== null || values.length < 2 || values.length > MAX_FOR_BEST;
  const found: Compared[] = values.map((_, variant) => ({
    differences: variant === 0 ? null : {},
    againstBest: picked ? null : {},
  }));
  for (const info of responses) {
    const list = observed(info.key);
    const best = picked ? null : bestOf(list, info, study.confidence);
    for (const [variant, difference] of differences(study, list, info).entries()) {
      const { differences, againstBest } = found[variant]!;
      if (difference !== null && differences !== null) differences[info.key] = difference;
      if (best !== null && againstBest !== null) againstBest[info.key] = best[variant]!;
    }
  }
  return found;
}

function bestOf(
  values: readonly (readonly (number | null)[])[],
  { better }: ResponseInfo,
  confidence: number,
): AgainstBest[] | null {
  return better === null ? null : compareWithBest(values, better, confidence);
}

function differences(
  study: Study,
  values: readonly (readonly (number | null)[])[],
  info: ResponseInfo,
): (Difference | null)[] {
  const { confidence, procedure } = study;
  const { errorRate } = procedure;
  const periods = `${periodOf(study)}s`;
  const noun = procedure.antithetic ? `antithetic pairs of ${periods}` : periods;
  return comparisonsInWords(values, 0, { confidence, errorRate, noun }, info).map((found) => {
    if (found === null) return null;
    return { ...found, joint: errorRate !== "per comparison" && found.comparisons > 1 && found.familyLow !== null };
  });
}
