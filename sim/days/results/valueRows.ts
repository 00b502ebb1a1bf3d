import type { StudyResults } from "./studyResults.ts";

/** One value of a study. */
export interface ValueRow {
  variant: string;
  /** From 0. */
  replication: number;
  response: string;
  unit: string;
  /** Null where the day has no such value. */
  value: number | null;
}

/** Every value of a study: variant by variant, in it response by response, in it day by day. */
export function* valueRows(results: StudyResults): Generator<ValueRow> {
  for (const variant of results.variants) {
    for (const { key, unit } of results.responses) {
      for (const [replication, value] of (variant.values[key] ?? []).entries()) {
        yield { variant: variant.name, replication, response: key, unit, value };
      }
    }
  }
}
