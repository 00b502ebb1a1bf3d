import { formatDecimals, formatDuration } from "../../../sim/text/units/index.ts";
import type { RunningDifference } from "./runningDifference.ts";

/** "The variant is 12 heads, 1.4 min ahead." */
export function differenceWords({ heads, seconds }: RunningDifference): string {
  if (heads === 0) return "Both lines are level.";
  const way = heads > 0 ? "ahead" : "behind";
  const count = formatDecimals(Math.abs(heads), 0);
  const time = Math.abs(seconds) < 1 ? "" : `, ${formatDuration(Math.abs(seconds))}`;
  return `The variant is ${count} ${Math.abs(heads) === 1 ? "head" : "heads"}${time} ${way}.`;
}
