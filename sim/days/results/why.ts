import type { Cause } from "../../day/engine/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { Estimate } from "../../maths/statistics/index.ts";
import type { Difference, MeanEstimate } from "./figures.ts";

/** Why the end of work of one variant is when it is: means over its days, each with its interval. */
export interface Why {
  /** Seconds from the day's start (or the end of the warm-up) to the end of work. */
  total: MeanEstimate;
  /** What the line waited for, most first; the means add up to `total`. */
  parts: ReasonPart[];
  /** Share of the day that each stage binds by all causes, most first. */
  stages: { stage: string; share: MeanEstimate }[];
  /** How the end of work moves with the mean times for which one run tells it; each figure is right, sign included. */
  slopes: SlopeEstimate[];
  /** The mean times whose slope is not given. */
  withheldSlopes: WithheldSlope[];
  /** Share of the time that a stage was the momentary bottleneck, alone or with others; line order. */
  bottleneck: { stage: string; sole: MeanEstimate; shifting: MeanEstimate }[];
}

export interface ReasonPart {
  cause: Cause;
  stage: string;
  detail: string;
  label: string;
  seconds: MeanEstimate;
}

/** A mean time of the plan. */
export interface MeanTime {
  parameter: string;
  stage: string;
  detail: string;
  label: string;
  /** Mean that is in the plan, seconds; 0 for a load, which moves as a whole. */
  meanSeconds: number;
}

/** Holds near today's value; what a larger change is worth, only trying it tells. */
export interface SlopeEstimate extends MeanTime {
  /** Seconds by which work ends later for each second more of the mean. */
  slope: MeanEstimate;
  /** Carcasses an hour more for each second more of the mean; less where it is negative. */
  rateSlope: MeanEstimate;
}

export interface WithheldSlope extends MeanTime {
  /** Why one run cannot tell it: a clause without a full stop. */
  reason: string;
}

/** What to change first: changes to the base plan, each simulated on the days of the base, and what that says. */
export interface Advice {
  /** The response that tells how much a change is worth. */
  response: ResponseInfo;
  /** Days of their own that the changes below rest on; no earlier choice was made with them. */
  days: number;
  /** Changes that do no harm on those days, most worth first. */
  changes: TriedChange[];
  /** Tried on fewer days and not followed up. */
  others: OtherChange[];
  /** Changes that would gain and are not offered, and why. */
  leftOut: { kind: ChangeKind; of: string; label: string; reason: string }[];
  effort: AdviceEffort;
  /** The same in sentences. */
  words: string[];
}

export type ChangeKind =
  | "person"
  | "position"
  | "quicker machine"
  | "no breakdowns"
  | "rarer breakdowns"
  | "quicker repairs"
  | "more places"
  | "fewer places"
  | "stagger"
  | "pair";

export interface TriedChange {
  kind: ChangeKind;
  /** Crew, stage, both places of a pair, or "the breaks". */
  of: string;
  label: string;
  /** The variant of the results that has it. */
  variant: string;
  difference: Difference;
  /** Whether it is shown to gain: `difference.shown`, which goes by the interval that is printed, and the better way. */
  gains: boolean;
  /** Whether it may be as good as the best, by comparisons with the best, all at once. */
  mayBeBest: boolean;
}

export interface OtherChange {
  kind: ChangeKind;
  of: string;
  label: string;
  /** Variant minus base over so many days (`n`), in the response's unit; the interval is by itself, at 99 %. */
  difference: Estimate;
}

/** What the advice cost. */
export interface AdviceEffort {
  /** Single changes and pairs that were simulated. */
  singles: number;
  pairs: number;
  /** Days of the plan and its changes while searching, and of the finalists and the plan on days of their own. */
  searchDays: number;
  ownDays: number;
  /** Days of every change in the search, and of those that looked best on them. */
  firstDays: number;
  secondDays: number;
}
