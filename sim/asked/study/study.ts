import type { ErrorRate, Precision } from "../../maths/statistics/index.ts";
import type { Plan } from "../plan/index.ts";

export type { ErrorRate, Precision };

/** A checked study: one base plan, its variants, how often each is run and how they are compared. */
export interface Study {
  name: string;
  question: string;
  /** What kind of question it is; left out: as the design and the responses suggest. */
  kind?: QuestionKind;
  /** The least difference that matters, by key of the response and in its own unit; "money": in the plan's currency, a day. */
  matters?: Readonly<Record<string, number>>;
  /** For whom the study is written: shown in the report. */
  reader: string;
  seed: string;
  /**
   * How many days are run of every variant; the most there may be where `procedure` has a stopping rule or a selection.
   * Even when days come in antithetic pairs.
   */
  replications: number;
  /** Two-sided confidence of every interval, say 0.95. */
  confidence: number;
  /** Keys of the responses to report, first one is the headline. */
  responses: string[];
  /** Whether each day tells what its end was owed to. */
  why: boolean;
  factors: Factor[];
  /** The first one is the base. */
  variants: Variant[];
  design: Design;
  procedure: Procedure;
}

/** One thing that is varied; `levels` in the order of the file, as the words to show. */
export interface Factor {
  name: string;
  /** What it sets; paths joined by " + " when there are several, "" when it chooses among whole alternatives. */
  path: string;
  levels: string[];
}

export interface Variant {
  name: string;
  /** Level index per factor, -1 where the variant leaves the base's value and no level says so; empty for lists. */
  levels: number[];
  /** What was changed, as the file wrote it: path -> value. */
  set: Record<string, unknown>;
  /** What was put into lists of the plan, in this order, after `set`. */
  insert: Insertion[];
  /** Paths of what was taken out, after `insert`. */
  remove: string[];
  plan: Plan;
}

/** One element put into a list of the plan, next to one that is there. */
export interface Insertion {
  side: "before" | "after";
  /** Path of the element it is put next to: "line.skinning". */
  path: string;
  element: unknown;
}

/** How the variants came about, as far as their analysis needs to know it. */
export type Design =
  | { kind: "list" | "factorial" | "one at a time" | "latin hypercube" }
  /** Each trajectory: indices into the study's variants, one more than there are factors; neighbours differ in one factor. */
  | { kind: "screening"; levels: number; trajectories: number[][] };

/** How days are run and compared. */
export interface Procedure {
  /** Null: `replications` days of every variant. */
  stopping: StoppingRule | null;
  /** Null: every variant gets as many days as the others. Never together with a stopping rule. */
  selection: Selection | null;
  /**
   * Days come in pairs: of days 2i and 2i + 1 the second is run on the mirrored random numbers of the first (see
   * `drawsOf`), and one pair is one observation.
   */
  antithetic: boolean;
  controls: Control[];
  /**
   * Variants come in blocks, one after another, each with random numbers of its own; within a block all have the same.
   * Absent: one block.
   */
  blocks?: Blocks;
  /** Which error probability the comparisons with the base keep. */
  errorRate: ErrorRate;
}

/** So many variants to a block, and so many days of each. */
export interface Blocks {
  variants: number;
  days: number;
}

/** What may be asked of a plan. */
export const QUESTION_KINDS = [
  "worth it",
  "best",
  "how much",
  "bottleneck",
  "limit",
  "what will it be",
  "what matters",
  "what if",
] as const;
export type QuestionKind = (typeof QUESTION_KINDS)[number];

export const ERROR_RATES = ["family-wise", "false discovery", "per comparison"] as const satisfies ErrorRate[];

/** Days are added, as many to every variant, until every interval of one response is narrow enough. */
export interface StoppingRule {
  response: string;
  /** The wanted half-width. */
  halfWidth: Precision;
  /** Of each variant's mean, or of each variant's difference to the base. */
  of: "mean" | "difference";
  /** Least and greatest number of days per variant, both sides of an antithetic pair counted. */
  atLeast: number;
  atMost: number;
}

/** The best variant is picked with a stated probability; see `startSelection`. */
export interface Selection {
  response: string;
  /** Which direction is wanted; null: the response's own. */
  better: "more" | "less" | null;
  /** Indifference zone: the smallest difference worth finding, in the response's own unit. */
  difference: number;
  /** Least probability that a variant picked is the best one, when the best is better by `difference` or more. */
  probability: number;
  /** Days of every variant before the first one is dropped; antithetic pairs counted as two. */
  firstStage: number;
  atMost: number;
}

/** A response whose mean is known beforehand, used to take out part of the luck (control variate). */
export interface Control {
  response: string;
  /** In the response's own unit. */
  mean: number;
}

/** What a study does when its file says nothing else; also what a single day needs. */
export const PLAIN_PROCEDURE: Procedure = Object.freeze({
  stopping: null,
  selection: null,
  antithetic: false,
  controls: [],
  errorRate: "family-wise",
});
