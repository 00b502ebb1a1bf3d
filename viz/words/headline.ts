import type { Difference, ResponseInfo, StudyResults, VariantResults } from "../contract.ts";

/** The response the study asks about first; undefined for a study without responses. */
export function headline(results: StudyResults): ResponseInfo | undefined {
  return results.responses[0];
}

/** Difference of a variant in one response; undefined for the base and where none was worked out. */
export function differenceIn(variant: VariantResults, key: string): Difference | undefined {
  return variant.differences?.[key];
}

/** The variant whose mean lies furthest from the base's in the headline response; null when there is only the base. */
export function furthestVariant(results: StudyResults): VariantResults | null {
  const key = headline(results)?.key;
  if (key === undefined) return null;
  const size = (variant: VariantResults) => Math.abs(differenceIn(variant, key)?.mean ?? 0);
  let furthest: VariantResults | null = null;
  for (const variant of results.variants.slice(1)) {
    if (furthest === null || size(variant) > size(furthest)) furthest = variant;
  }
  return furthest;
}

/** One variant, one replication: a single day, of which no interval can be told. A week is no single day. */
export function isSingleDay(results: StudyResults): boolean {
  return results.plan.week === undefined && results.variants.length === 1 && results.study.replications < 2;
}
