import type { StudyResults, VariantResults } from "./studyResults.ts";

/** One value of a study. */
export interface ValueRow {
  variant: string;
  /** Of each factor of the study, in its order; null in a variant that has none. */
  levels: readonly (string | null)[];
  /** From 0. */
  replication: number;
  response: string;
  unit: string;
  /** Null where the day has no such value. */
  value: number | null;
  /** The value as seconds after midnight; null where it is no time of day. */
  clockSeconds: number | null;
}

/** Every value of a study: variant by variant, in it response by response, in it day by day. */
export function* valueRows(results: StudyResults): Generator<ValueRow> {
  for (const variant of results.variants) {
    const levels = levelsOf(results, variant);
    for (const { key, unit, format } of results.responses) {
      for (const [replication, value] of (variant.values[key] ?? []).entries()) {
        const isClock = format === "clock" && value !== null;
        const clockSeconds = isClock ? variant.day.startClockSeconds + value : null;
        yield { variant: variant.name, levels, replication, response: key, unit, value, clockSeconds };
      }
    }
  }
}

/** A variant's level of each factor, in words. */
export function levelsOf({ factors }: Pick<StudyResults, "factors">, variant: VariantResults): (string | null)[] {
  return factors.map(({ levels }, index) => levels[variant.levels[index] ?? -1] ?? null);
}
