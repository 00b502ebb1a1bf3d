import type { Decision } from "./decision.ts";
import type { StudyResults } from "./studyResults.ts";

type Told = Pick<StudyResults, "responses"> & {
  variants: readonly Pick<StudyResults["variants"][number], "differences">[];
  decision?: Decision | null;
};

/**
 * Indexes of the variants whose first day is drawn: today's plan, and the variant to take; where that is today's plan or
 * none can be named, the one whose mean lies furthest from today's in the first response.
 */
export function drawnVariants(results: Told): number[] {
  const other = results.decision?.best || furthest(results);
  return other === null ? [0] : [0, other];
}

function furthest({ responses, variants }: Told): number | null {
  const key = responses[0]?.key;
  if (key === undefined || variants.length < 2) return null;
  const sizes = variants.map(({ differences }) => Math.abs(differences?.[key]?.mean ?? 0));
  return sizes.indexOf(Math.max(...sizes.slice(1)), 1);
}
