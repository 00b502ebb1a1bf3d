import { csvText } from "./csvText.ts";
import type { StudyResults } from "./studyResults.ts";

/**
 * Every single value: one row per variant, replication (counted from 0) and response; an empty cell where there is
 * none.
 */
export function valuesCsv(results: StudyResults): string {
  const rows = results.variants.flatMap((variant) =>
    results.responses.flatMap(({ key, unit }) =>
      (variant.values[key] ?? []).map((value, replication) => [variant.name, replication, key, unit, value]),
    ),
  );
  return csvText(["variant", "replication", "response", "unit", "value"], rows);
}
