import type { Plan } from "../plan/index.ts";

/** A checked study: one base plan, its variants, and how often each is run. */
export interface Study {
  name: string;
  question: string;
  /** For whom the study is written: shown in the report. */
  reader: string;
  seed: string;
  replications: number;
  /** Two-sided confidence of every interval, say 0.95. */
  confidence: number;
  /** Keys of the responses to report, first one is the headline. */
  responses: string[];
  factors: Factor[];
  /** The first one is the base. */
  variants: Variant[];
}

/** One thing that is varied; `levels` in the order of the file, as the words to show. */
export interface Factor {
  name: string;
  path: string;
  levels: string[];
}

export interface Variant {
  name: string;
  /** Level index per factor (factorial designs), -1 where the variant leaves the base's value; empty for lists. */
  levels: number[];
  /** What was changed, as the file wrote it: path -> value. */
  set: Record<string, unknown>;
  plan: Plan;
}
