import type { Why, WithheldSlope } from "../contract.ts";
import { isolated } from "../frame/index.ts";
import { slopeName } from "./slopeRanks.ts";

const MOST_NAMES = 4;

/**
 * Why figures are missing among the effects of small changes: a sentence for each reason, none where nothing is withheld. Where one reason
 * stands against all of them, their names say nothing and are left out.
 */
export function withheldWords({ slopes, withheldSlopes }: Pick<Why, "slopes" | "withheldSlopes">): string[] {
  const reasons = [...new Set(withheldSlopes.map(({ reason }) => reason))];
  const [only] = reasons;
  if (only === undefined) return [];
  if (reasons.length === 1 && slopes.length === 0) {
    return [`What small changes of each time would do is not given, because ${isolated(only)}. To see what a change is worth, simulate it.`];
  }
  return reasons.map((reason) => {
    const names = listed(withheldSlopes.filter((slope) => slope.reason === reason));
    return `No figure for ${names}, because ${isolated(reason)}.`;
  });
}

function listed(slopes: readonly WithheldSlope[]): string {
  const names = slopes.map(slopeName);
  const [shown, rest] = [names.slice(0, MOST_NAMES), names.length - MOST_NAMES];
  return rest > 0 ? `${shown.join("; ")} and ${rest} more` : shown.join("; ");
}
