import type { Plan, TextFiles } from "../plan/index.ts";
import { planWith } from "./buildVariants.ts";
import type { Draft } from "./draft.ts";

/**
 * For each factor the level that leaves the base plan as it is, or -1 when none does. Plans are compared, not words, so
 * "60 s" and "1 min" are one level.
 */
export function baseLevels(draft: Draft, base: { json: unknown; files: TextFiles }, plan: Plan): number[] {
  if (!draft.baseHasLevels) return draft.dimensions.map(() => -1);
  const basePlan = comparable(plan);
  return draft.dimensions.map(({ changes }) =>
    changes.findIndex((change) => {
      const changed = planWith(base, change).plan;
      return changed !== null && comparable(changed) === basePlan;
    }),
  );
}

/** JSON has no word for infinity; and plans are always built with their keys in one order. */
function comparable(plan: Plan): string {
  return JSON.stringify(plan, (_, value) => (value === Number.POSITIVE_INFINITY ? "no limit" : value));
}
