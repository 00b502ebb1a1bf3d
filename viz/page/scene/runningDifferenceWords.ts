import { formatNumber } from "../../frame/index.ts";
import { spanWords } from "../../words/index.ts";
import type { RunningDifference } from "./runningDifference.ts";

/** "The variant is 12 heads, 1.4 min ahead." */
export function differenceWords({ heads, seconds }: RunningDifference): string {
  if (heads === 0) return "Both lines are level.";
  const way = heads > 0 ? "ahead" : "behind";
  const count = formatNumber(Math.abs(heads), 0);
  const time = Math.abs(seconds) < 1 ? "" : `, ${spanWords(Math.abs(seconds))}`;
  return `The variant is ${count} ${Math.abs(heads) === 1 ? "head" : "heads"}${time} ${way}.`;
}
