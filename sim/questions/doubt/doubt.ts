import type { Plan, UncertainFigure } from "../../asked/plan/index.ts";
import type { Study } from "../../asked/study/index.ts";
import type { ResponseInfo } from "../../day/observations/index.ts";
import type { JointFigure, JointPair, Precision } from "../../maths/statistics/index.ts";

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
  /** Null where the plan does not tell how much a single reading of it would. */
  readings: FigureReadings | null;
}

/** How much single readings of a figure tell. */
export interface FigureReadings {
  /** Readings that the figure rests on; null where the plan names none. */
  taken: number | null;
  /** Readings that would tell as much as is known now: those taken, else (cv of single readings / cv of what the figure may be)^2. */
  known: number;
  /** What one reading takes on average, in seconds: it cannot be read faster. Null of what is no time. */
  secondsEach: number | null;
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
  /** Probability that it is the best of all; all of them together are 1. */
  chanceBest: number;
  /** Interval of that. */
  bestWithin: Between;
  /** Hardly ever the best, and hardly ever better than the one that is best on average: it can be dropped. */
  drop: boolean;
}

/** Which variant to choose by the first response, for all that is not known, of those that do no harm. */
export interface DoubtDecision {
  best: number;
  /** Null for one that is left out because it does harm. */
  variants: (DoubtContender | null)[];
  /** What it is worth to know all figures before choosing, in the response's unit; and each one alone. */
  worth: number;
  figures: number[];
  /** By variant and variant: probability that the first beats the second, null of itself and of one left out; null of many variants. */
  beats: (number | null)[][] | null;
}

/** What figures do to the first response alone and together, with the variant that is told. */
export interface DoubtJoint {
  /** Part of what worlds differ by that curves of single figures and of pairs predict of left-out worlds. */
  explained: number;
  /** One for each figure: alone, and alone and together with others (total-effect index). */
  figures: Pick<JointFigure, "alone" | "total">[];
  /** What two figures do only together, the greatest first. */
  pairs: Pick<JointPair, "figures" | "share">[];
}

/** What so many more readings of one figure would bring. */
export interface MoreReadings {
  readings: number;
  /** Seconds that they take at least; null of what is no time. */
  seconds: number | null;
  /** Part of the figure's own standard deviation that stays. */
  left: number;
  /** How much narrower the span of days would be, on average, in the response's unit. */
  narrower: number;
  /** Worth for the choice, in the response's unit a day; null without a choice. */
  worth: number | null;
}

export interface ReadingAdvice {
  steps: MoreReadings[];
  /** Index of the fewest that bring half of what it would bring to know the figure exactly; null where that is next to nothing or takes more. */
  enough: number | null;
}

/** How far chance may still move the mean of the first response, and what was simulated for it. */
export interface DoubtPrecision {
  /** Wanted half-width. */
  wanted: Precision;
  /** The one of the variant that is known worst, in the response's unit; null where a world has no value. */
  reached: number | null;
  isEnough: boolean;
  rounds: { worlds: number; days: number }[];
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
  /** The variant that is told of: the best one, else today's plan. */
  told: number;
  joint: DoubtJoint | null;
  /** How well the mean over all worlds is known, where that was asked for. */
  precision: DoubtPrecision | null;
  /** Of the first response with that variant, one for each figure; null where nobody can tell how much a reading tells. */
  readings: (ReadingAdvice | null)[];
  /** Of the first response, means by variant and world: what can be drawn, or reckoned on. */
  means: (number | null)[][];
}
