import type { DayRecord } from "../engine/index.ts";
import type { ResponseInfo } from "../observations/index.ts";
import type { Difference, Estimate } from "../statistics/index.ts";
import type { Factor } from "../study/index.ts";

export type { Difference, Estimate, ResponseInfo };

/** Everything a study found: what results.json holds and what the report is drawn from. */
export interface StudyResults {
  format: 1;
  gambrel: string;
  study: {
    name: string;
    question: string;
    reader: string;
    seed: string;
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
    limitSources: Record<string, string>;
  };
  responses: ResponseInfo[];
  factors: Factor[];
  variants: VariantResults[];
}

export interface VariantResults {
  name: string;
  levels: number[];
  set: Record<string, unknown>;
  /** Keyed by response: estimate over replications. A key is absent where no replication has a value. */
  estimates: Record<string, Estimate>;
  /**
   * Paired difference to the base variant, same seeds; null for the base itself, a key absent where no pair has values.
   */
  differences: Record<string, Difference> | null;
  /** Raw value per replication. */
  values: Record<string, (number | null)[]>;
  /** The first replication's day with its traces. */
  day: DayRecord;
}
