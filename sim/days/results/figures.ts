import type { ControlUsed, Estimate } from "../../maths/statistics/index.ts";
import type { ComparisonInWords } from "./comparisonsInWords.ts";

/** An estimate of a mean; `n` counts observations. */
export interface MeanEstimate extends Estimate {
  /** What antithetic pairs and controls did to the interval; absent without them. */
  reduction?: Reduction;
}

export interface Reduction {
  /** Half-width by that of as many independent days; null without antithetic pairs, or without spread. */
  antitheticRatio: number | null;
  /** Half-width by that without controls; null where none was used. */
  controlRatio: number | null;
  controls: ControlUsed[];
  words: string;
}

/** A difference to the base as one of the comparisons of its response. */
export interface Difference extends ComparisonInWords {
  /** The interval to show, by which `shown` goes, is the one that allows for all comparisons: `familyLow`, `familyHigh`. */
  joint: boolean;
}
