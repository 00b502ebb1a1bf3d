import type { ComparisonInWords, VerdictKind } from "../../days/results/index.ts";
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

export interface OptionsResult extends OptionsVerdict {
  currency: string;
  interest: number;
  daysPerYear: number;
  confidence: number;
  /** What the cash of a day is made of. */
  cashWords: string;
  /** Against the best: buying nothing. */
  nothing: AgainstBest;
  /** In the order of the file. */
  options: OfferWorth[];
  /** Which may be the best of all; a sentence for each option, the best first; what is not reckoned. */
  words: string[];
}

/** Which offer to buy, in one sentence, and what follows. */
export interface OptionsVerdict {
  answer: VerdictKind;
  verdict: string;
  /** What to do next. */
  next: string[];
  /** Index of the offer to buy; null where none is. */
  buy: number | null;
}
