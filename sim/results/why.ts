import type { Cause } from "../engine/index.ts";
import type { ResponseInfo } from "../observations/index.ts";
import type { Difference, MeanEstimate } from "./studyResults.ts";

/** Why the end of work of one variant is when it is: means over its days, each with its interval. */
export interface Why {
  /** Seconds from the day's start (or the end of the warm-up) to the end of work. */
  total: MeanEstimate;
  /** What they are owed to, most first; the means add up to `total`. */
  parts: BoundPart[];
  /** Share of the day that each stage binds by all causes, most first. */
  stages: { stage: string; share: MeanEstimate }[];
  /** How the end of work moves with the mean times for which one run tells it; each figure is right, sign included. */
  slopes: SlopeEstimate[];
  /** The mean times whose slope is not given. */
  withheldSlopes: WithheldSlope[];
  /** Share of the time that a stage was the momentary bottleneck, alone or with others; line order. */
  bottleneck: { stage: string; sole: MeanEstimate; shifting: MeanEstimate }[];
}

export interface BoundPart {
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

/** What to change first: single changes to the base plan, each tried in paired runs. */
export interface Advice {
  /** The response that tells how much a change is worth. */
  response: ResponseInfo;
  days: number;
  /** Most worth first. */
  changes: TriedChange[];
  /** The same in sentences. */
  words: string[];
}

export interface TriedChange {
  kind: "person" | "place" | "position" | "shorter cycle" | "no breakdowns";
  /** Crew or stage. */
  of: string;
  label: string;
  /** The variant of the results that has it. */
  variant: string;
  difference: Difference;
}
