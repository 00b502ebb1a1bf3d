import type { ComparisonInWords } from "../../days/results/index.ts";
import type { AgainstBest } from "../../maths/statistics/index.ts";
import type { Appraisal } from "./appraise.ts";

/** A figure with its interval; the intervals of all options hold at once. */
export interface Ranged {
  mean: number;
  low: number;
  high: number;
}

export interface OfferWorth {
  name: string;
  price: number;
  lifeYears: number;
  servicePerYear: number;
  /** Cash of a day more than today. */
  cashPerDay: ComparisonInWords;
  worth: Record<keyof Appraisal, Ranged>;
  /** Whether the net present value is shown to be above or below 0. */
  verdict: "pays" | "does not pay" | "not decided";
  /** Against the best of the others that do no harm, by average yearly benefit; buying nothing is one of them. Null where it does harm. */
  againstBest: AgainstBest | null;
  /** What it makes worse than today's plan, so that it is not offered whatever it earns; null for nothing. */
  harm: string | null;
  words: string;
}
