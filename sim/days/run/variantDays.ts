import type { DayRecord } from "../../day/engine/index.ts";

/** What is known of a variant's days. */
export interface VariantDays {
  /** Responses that were kept. */
  keys: readonly string[];
  days: number;
  /** Of one response, day by day; null where a day has no such value. */
  valuesOf(key: string): (number | null)[];
  firstDay: DayRecord;
}

/** What is known of a day: its measures, and the day itself for the first replication. */
export interface DayOutcome {
  values: Record<string, number | null>;
  day: DayRecord | null;
}

/** Of days that are whole in memory. */
export function variantDays(days: readonly DayOutcome[]): VariantDays {
  return {
    keys: Object.keys(days[0]!.values),
    days: days.length,
    valuesOf: (key) => days.map(({ values }) => values[key] ?? null),
    firstDay: days[0]!.day!,
  };
}
