import type { Plan, UncertainFigure } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";

/** How many worlds are drawn, and how many days each is simulated. */
export interface WorldCounts {
  worlds: number;
  days: number;
  seed: string;
}

/** A figure of one plan or more that nobody knows exactly, with what it is multiplied by in each world. */
export interface DoubtFigure extends Pick<UncertainFigure, "name" | "kind" | "note"> {
  /** Where it stands, in the variants that have it. */
  paths: string[];
  /** Factors by path and world: one row where all paths have the same. */
  factors: number[][];
}

/** What is simulated to find out: every variant in every world, the variants of a world side by side. */
export interface DoubtQuestion {
  study: Study;
  /** Keys of the responses to tell; the study has others besides, by which harm is seen. */
  responses: string[];
  /** Today's plan, whose time limits count. */
  plan: Plan;
  figures: DoubtFigure[];
  /** Names of the variants, today's plan first. */
  variants: string[];
  counts: WorldCounts;
  /** Name of what was asked: a study or a plan. */
  name: string;
  /** Wanted direction of the first response, where the asking study says it. */
  better: "more" | "less" | null;
  calendar: DoubtCalendar;
}

/** What a time of day counts from, in seconds after midnight, and what one observation is. */
export interface DoubtCalendar {
  startClockSeconds: number;
  period: "day" | "week";
}

/** From the low end to the high one. */
export interface Between {
  low: number;
  high: number;
}

/** What one figure does to a response. */
export interface FigureEffect {
  /** First-order share of what is not known, with its interval; null where that is nothing. */
  share: (Between & { value: number }) | null;
  /** How much narrower the span of days would be on average if the figure were known, in the response's unit. */
  narrower: number;
}

/** A response of one variant over all worlds and days, in the response's own unit. */
export interface DoubtEstimate {
  mean: number;
  /** The mean day, as it would be told if every figure were known: chance between days alone. */
  plain: Between;
  /** The mean day with what is not known. */
  full: Between;
  /** What single days come to, in so many of 100 as the confidence says. */
  days: Between;
  /** The part of that span which luck alone would leave if every figure were known; it lies within `days`. */
  luck: Between;
  /** Standard deviations: of days of one world, and of worlds. */
  luckSd: number;
  notKnownSd: number;
  /** Part of the variance of days that is not knowing, with its interval; null where days do not vary. */
  notKnown: (Between & { value: number }) | null;
  /** The same of the span of days: the part that `luck` leaves of it is the rest. Null where that span is 0. */
  spanNotKnown: (Between & { value: number }) | null;
  /** One for each figure, in their order. */
  figures: FigureEffect[];
}

/** How one variant fares against the one that is best on average. */
export interface DoubtContender {
  /** How much worse than the best one on average, in the response's unit; 0 of the best one. */
  behind: number;
  /** Probability to beat the best one; null of itself. */
  chance: number | null;
  /** How much worse than the best of each world, on average. */
  regret: number;
  /** Probability that no other variant is better, with its interval. All of them together are 1. */
  best: Between & { value: number };
}

/** Which variant to choose by the first response, for all that is not known, of those that do no harm. */
export interface DoubtDecision {
  best: number;
  /** Null for one that is left out because it does harm. */
  variants: (DoubtContender | null)[];
  /** What it is worth to know all figures before choosing, in the response's unit; and each one alone. */
  worth: number;
  figures: number[];
}

/** What came of it. */
export interface Doubt {
  name: string;
  confidence: number;
  counts: WorldCounts;
  figures: DoubtFigure[];
  variants: string[];
  responses: ResponseInfo[];
  /** By response, then by variant; null where a world has no value. */
  estimates: (DoubtEstimate | null)[][];
  /** What each variant makes worse for animals, people or hygiene, as a clause; null where nothing is. */
  harms: (string | null)[];
  /** Null with one variant that does no harm, and where no direction is better. */
  decision: DoubtDecision | null;
  calendar: DoubtCalendar;
  /** Days that did not end by themselves, of all. */
  unfinished: number;
  /** Of the first response, means by variant and world: what can be drawn, or reckoned on. */
  means: (number | null)[][];
}
