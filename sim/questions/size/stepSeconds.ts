import { meanOf } from "../../maths/random/index.ts";
import type { DemandStep } from "./demand.ts";

/** Mean time of one head in a step, seconds: work at one position, or the least stay; 0 for chilling, whose time is computed. */
export function stepSeconds({ figures: { cycle, rate, dwell } }: DemandStep): number {
  if (cycle !== undefined) return meanOf(cycle);
  if (rate !== undefined) return 1 / rate;
  return dwell === undefined ? 0 : meanOf(dwell);
}
