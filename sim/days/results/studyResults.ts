import type { Control, ErrorRate, Factor } from "../../asked/study/index.ts";
import type { DayRecord } from "../../day/engine/index.ts";
import type { CostSheet, MassBalance, ResponseInfo, UtilitySheet } from "../../day/observations/index.ts";
import type {
  AgainstBest,
  EffectShare,
  ElementaryEffects,
  Estimate,
  LevelStep,
  SequentialState,
  Verdict,
} from "../../maths/statistics/index.ts";
import type { Decision } from "./decision.ts";
import type { Difference, MeanEstimate } from "./figures.ts";
import type { KillLineResults } from "./killLineResults.ts";
import type { Advice, Why } from "./why.ts";

export type {
  AgainstBest,
  CostSheet,
  EffectShare,
  ElementaryEffects,
  Estimate,
  LevelStep,
  MassBalance,
  ResponseInfo,
  UtilitySheet,
};

/** Everything a study found: what results.json holds and what the report is drawn from. */
export interface StudyResults {
  format: 1;
  gambrel: string;
  /**
   * SHA-256 (hexadecimal) over everything that the days follow from: plans, seed, procedure, responses and traces. Two
   * runs of one version with the same digest have the same results. Left out where no digest can be made (a browser).
   */
  inputsSha256?: string;
  study: {
    name: string;
    question: string;
    reader: string;
    seed: string;
    /** Days of every variant; of the variant that has most of them where a selection dropped others. */
    replications: number;
    confidence: number;
    command: string;
  };
  plan: {
    name: string;
    notes: string;
    sources: { path: string; kind: string; note: string }[];
    targetHeadsPerHour: number | null;
    breaks: { name: string; fromSeconds: number; toSeconds: number }[];
    shifts: { name: string; fromSeconds: number; toSeconds: number }[];
    /** Cleaning after the last work; 0 without it. */
    cleaningSeconds: number;
    limitSources: Record<string, string>;
    /** Its days, where the plan has a week: then one observation is a week. Absent of a plan of one day, and in older results. */
    week?: WeekOutline;
  };
  responses: ResponseInfo[];
  factors: Factor[];
  procedure: ProcedureResults;
  /** Of a screening design: what each factor does to each response (keyed by it), factors in their order; else null. */
  screening: Record<string, (ElementaryEffects | null)[]> | null;
  /**
   * Of a design of factors, keyed by response: what each step from one level to the next did, factors in their order, null
   * where no setting of the others was run with all levels. Null without factors, and in a screening.
   */
  levelSteps: Record<string, (LevelStep[] | null)[]> | null;
  /**
   * Of a factorial or a Latin hypercube, keyed by response (the first six of them): what each factor and
   * each pair did, the greatest first; null where nothing varies. Null of other designs, absent in older results.
   */
  effects?: Record<string, StudyEffects | null> | null;
  /** Of a single day whose first stage never runs out of heads: what the line can do; else null. */
  capacity: CapacityResults | null;
  /** The answer to the study's question; null where there is nothing to decide by. Absent in older results. */
  decision?: Decision | null;
  /** What to change first; null unless that was asked for. */
  advice: Advice | null;
  /**
   * Indexes of the variants whose first day is drawn, today's plan first: their `day` is whole. Of the others it is only
   * how the day ended (`endedDay`), unless traces of all were asked for. Absent in older results, where every day is whole.
   */
  drawn?: number[];
  variants: VariantResults[];
}

/** What factors did to a response over all points of a design. */
export interface StudyEffects {
  points: number;
  /** Part of what the points differ by that these effects predict of left-out points (of a factorial: that they hold); 0 to 1. */
  explained: number;
  /** Single factors and pairs of factors, the greatest share first. */
  ranked: StudyEffect[];
}

/** What one factor did alone, or two did together beyond what each does alone. */
export interface StudyEffect {
  /** Index of the factor, or of both. */
  factors: number[];
  /** Part of the variance of the points, with its interval; none where one day is all there is. */
  share: EffectShare;
  /** Of a single factor: alone and together with one other (total-effect index). */
  total: EffectShare | null;
  /** From where it makes the response lowest to where it makes it highest, in the response's unit. */
  span: number;
  /** These places: a level of the factor, or of both. */
  lowest: number[];
  highest: number[];
}

/** What readers of results need to know of a plan's week. */
export interface WeekOutline {
  /** Date of the first day, or null. */
  begins: string | null;
  days: {
    name: string;
    works: boolean;
    /** It works and is behind the warm-up. */
    counted: boolean;
    /** Seconds from midnight of the first day to the start of the day's clock. */
    startSeconds: number;
    shifts: { name: string; fromSeconds: number; toSeconds: number }[];
    breaks: { name: string; fromSeconds: number; toSeconds: number }[];
  }[];
  orders: { name: string; day: string; bySeconds: number; carcasses: number | null; kilograms: number | null }[];
}

/** The throughput of one long run after its warm-up. */
export interface CapacityResults {
  /** Carcasses an hour with the interval of batch means; null where the run is too short for any. */
  headsPerHour: { mean: number; low: number; high: number } | null;
  confidence: number;
  /** Minutes with supply, and how many of them were left out as warm-up (MSER-5). */
  minutes: number;
  warmUpMinutes: number;
  batches: number;
  batchMinutes: number;
  /** The warm-up has no clear end, or the batches hang together: the interval must not be relied on. */
  runTooShort: boolean;
  words: string;
}

/** How the days were run and compared, and what came of the rules that decided on their number. */
export interface ProcedureResults {
  /** What one observation is; `n` of every estimate counts these. */
  observation: "day" | "antithetic pair";
  errorRate: ErrorRate;
  stopping: StoppingResults | null;
  selection: SelectionResults | null;
  controls: Control[];
}

export interface StoppingResults {
  response: string;
  /** Whether the wanted half-width was reached, or the most days allowed before it. */
  kind: "enough" | "ceiling";
  /** One per variant; null for the base where differences are looked at. */
  variants: ((SequentialState & { words: string }) | null)[];
  words: string;
}

export interface SelectionResults {
  response: string;
  better: "more" | "less";
  /** Indifference zone, in the response's unit. */
  difference: number;
  /** Promised probability of picking the best. */
  probability: number;
  verdict: Verdict;
  /** Variants given up, and after how many observations. */
  dropped: { variant: number; after: number }[];
  words: string;
}

/**
 * What the planned stops (breaks and pauses) of one day cost: the day is simulated once more without them, with the same
 * random numbers. Seconds.
 */
export interface PlannedStopCost {
  /** End of the last work, less that of the day without planned stops; can be negative by luck. */
  lostSeconds: number;
  /** The most that any crew or stage on the line stood by plan before the end of work. */
  plannedSeconds: number;
  /** Heads worked fewer than without the stops: where hanging ends at an hour, stops cost heads. */
  lostHeads: number;
  /** Seconds of the way to the end of work that the line waited for a planned stop to end, by stage, most first. */
  where: { stage: string; seconds: number }[];
}

export interface VariantResults {
  name: string;
  /** Days that were run of it. */
  days: number;
  levels: number[];
  set: Record<string, unknown>;
  /** Keyed by response: estimate over replications. A key is absent where no replication has a value. */
  estimates: Record<string, MeanEstimate>;
  /**
   * Paired difference to the base variant, same seeds; null for the base itself, a key absent where no pair has values.
   */
  differences: Record<string, Difference> | null;
  /**
   * Keyed by response with a wanted direction: how far the variant is from the best of the others, all such intervals at
   * once. Null where that was not asked: one variant only, more than 200 of them, or a selection, which answers instead.
   */
  againstBest: Record<string, AgainstBest> | null;
  /**
   * Raw value per replication, padded with null to the days of the variant that has most. Empty in results that were read
   * from a results.json in columns (of more than 20 variants): values.parquet has them.
   */
  values: Record<string, (number | null)[]>;
  /** Where the time to the end of work went; null when the study does without, or a day did not end by itself. */
  why: Why | null;
  /** How stunned heads fared; null where the plan does not say where heads are stunned. Absent in older results. */
  killLine?: KillLineResults | null;
  /** What the planned stops of the first day cost; null where it has none, or was cut off. Absent in older results. */
  plannedStops?: PlannedStopCost | null;
  /** What must be said of the first day: who was absent, heads left where and why, planned stops that cost too much. */
  dayNotes?: string[];
  /** What went in and came out on the first day, in kilograms; null where the plan takes nothing off. Absent of days not kept whole. */
  massBalance?: MassBalance | null;
  /** Water, heat, air and electricity of the first day by consumer; null where the plan uses none. Absent of days not kept whole. */
  utilitySheet?: UtilitySheet | null;
  /** Costs and margin of the first day, without and with what the plant costs; null without money. Absent of days not kept whole. */
  costSheet?: CostSheet | null;
  /** The first replication's day, whole and with its traces where it is drawn; else how it ended (see `drawn`). */
  day: DayRecord;
}
