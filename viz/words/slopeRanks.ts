import type { MeanTime, SlopeEstimate } from "../contract.ts";
import { isolated } from "../frame/index.ts";

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
