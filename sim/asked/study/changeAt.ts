import { type Change, joinChanges } from "./change.ts";
import type { Dimension } from "./draft.ts";

/** What a choice of levels changes in the base; a level of -1 changes nothing. */
export function changeAt(dimensions: readonly Dimension[], levels: readonly number[]): Change {
  return joinChanges(dimensions.flatMap(({ changes }, factor) => changes[levels[factor]!] ?? []));
}
