import { groupMeans } from "./groupMeans.ts";
import { mser, type WarmUp } from "./mser.ts";

const BATCH = 5;

/**
 * MSER-5: the marginal standard error rule on the means of consecutive fives, which smooths what single values would
 * hide (White, Cobb and Spratt 2000, Simulation 75(6)). Values after the last whole five are left out. `deleted` and
 * `kept` count values, not fives. Null with fewer than 20 values ("not enough data").
 *
 * @example mser5(throughputPerMinute)?.deleted // 20: leave the first 20 minutes out
 */
export function mser5(values: readonly number[]): WarmUp | null {
  const found = mser(groupMeans(values, BATCH));
  return found === null ? null : { ...found, deleted: found.deleted * BATCH, kept: found.kept * BATCH };
}
