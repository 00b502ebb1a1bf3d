import type { ResponseInfo } from "../../day/observations/index.ts";
import { type PairedDifference, pairedDifference } from "../../maths/statistics/index.ts";
import { scaleOf } from "./comparisonsInWords.ts";
import { differenceWords } from "./differenceWords.ts";

/** A difference to the base by itself, with one sentence that says it, with its confidence. */
export interface DifferenceInWords extends PairedDifference {
  words: string;
}

/** The paired difference of two lists of days (see `pairedDifference`) with its sentence; null when no pair is left. `noun`: what was simulated, days where it is left out. */
export function differenceInWords(
  variantValues: readonly (number | null)[],
  baseValues: readonly (number | null)[],
  confidence: number,
  info: ResponseInfo,
  noun?: string,
): DifferenceInWords | null {
  const found = pairedDifference(variantValues, baseValues, confidence, scaleOf(info));
  return found === null ? null : { ...found, words: differenceWords(found, confidence, info, { noun }) };
}
