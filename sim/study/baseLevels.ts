import type { Plan, TextFiles } from "../plan/index.ts";
import { planWith } from "./buildVariants.ts";
import type { Draft } from "./draftVariants.ts";

/**
 * For each factor the level that leaves the base plan as it is, or -1 when none does. Plans are compared, not words, so
 * "60 s" and "1 min" are one level.
 */
export function baseLevels(draft: Draft, base: { json: unknown; files: TextFiles }, plan: Plan): number[] {
  const basePlan = comparable(plan);
  return draft.factors.map(({ path }, factor) =>
    draft.values[factor]!.findIndex((value) => {
      const changed = planWith(base, { [path]: value }).plan;
      return changed !== null && comparable(changed) === basePlan;
    }),
  );
}

/** JSON has no word for infinity; and plans are always built with their keys in one order. */
function comparable(plan: Plan): string {
  return JSON.stringify(plan, (_, value) => (value === Number.POSITIVE_INFINITY ? "no limit" : value));
}
