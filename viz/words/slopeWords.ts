import type { MeanTime, SlopeEstimate, Why, WithheldSlope } from "../contract.ts";
import { isolated } from "../frame/index.ts";

const MAX_NAMES = 4;

/**
 * Why figures are missing among the effects of small changes: a sentence for each reason, none where nothing is withheld.
 * Where one reason holds for all of them, their names say nothing and are left out.
 */
export function withheldWords({ slopes, withheldSlopes }: Pick<Why, "slopes" | "withheldSlopes">): string[] {
  const reasons = [...new Set(withheldSlopes.map(({ reason }) => reason))];
  const [only] = reasons;
  if (only === undefined) return [];
  if (reasons.length === 1 && slopes.length === 0) {
    return [
      `What small changes of each time would do is not given, because ${isolated(only)}. To see what a change is worth, simulate it.`,
    ];
  }
  return reasons.map((reason) => {
    const names = listed(withheldSlopes.filter((slope) => slope.reason === reason));
    return `No figure for ${names}, because ${isolated(reason)}.`;
  });
}

function listed(slopes: readonly WithheldSlope[]): string {
  const names = slopes.map(slopeName);
  const [shown, rest] = [names.slice(0, MAX_NAMES), names.length - MAX_NAMES];
  return rest > 0 ? `${shown.join("; ")} and ${rest} more` : shown.join("; ");
}

/** What a change of the mean by a share of itself does: seconds by which work would end later if it were doubled, size only. */
function slopeStrength({ slope, meanSeconds }: SlopeEstimate): number {
  return Math.abs(slope.mean) * (meanSeconds || 1);
}

/** Those that matter most first. */
export function rankedSlopes(slopes: readonly SlopeEstimate[]): SlopeEstimate[] {
  return [...slopes].sort((a, b) => slopeStrength(b) - slopeStrength(a));
}

/** "evisceration: cycle time", "skinning: repair time (jam)", "first lorry: arrival". */
export function slopeName({ parameter, stage, detail }: Pick<MeanTime, "parameter" | "stage" | "detail">): string {
  if (stage === "") return `${isolated(detail || "heads")}: ${parameter}`;
  return `${isolated(stage)}: ${parameter}${detail === "" ? "" : ` (${isolated(detail)})`}`;
}
