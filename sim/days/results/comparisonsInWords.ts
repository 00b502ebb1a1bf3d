import type { ResponseInfo } from "../../day/observations/index.ts";
import { type Comparison, compareAll, type Scale } from "../../maths/statistics/index.ts";
import { type ComparisonWordsOptions, comparisonWords } from "./comparisonWords.ts";

/** A difference to the base as one of a family, with one sentence that says it by the interval its verdict goes by. */
export interface ComparisonInWords extends Comparison {
  words: string;
}

/** Every variant against the base for one response, as `compareAll` finds it, each with its sentence. */
export function comparisonsInWords(
  values: readonly (readonly (number | null)[])[],
  base: number,
  options: ComparisonWordsOptions,
  info: ResponseInfo,
): (ComparisonInWords | null)[] {
  return compareAll(values, base, { ...options, scale: scaleOf(info) }).map((found) => {
    return found === null ? null : { ...found, words: comparisonWords(found, options, info) };
  });
}

/** A time of day has no natural zero. */
export function scaleOf({ format }: Pick<ResponseInfo, "format">): Scale {
  return format === "clock" ? "interval" : "ratio";
}
