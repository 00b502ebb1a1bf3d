import { type Varying, writtenMeanOf } from "../varying/index.ts";
import { standardNormalBelow } from "./quantile.ts";

/** Mean of a varying quantity, in its own unit; for `normal` the mean after the cut at 0 (Johnson, Kotz and Balakrishnan 1994). */
export function meanOf(varying: Varying): number {
  return varying.family === "normal" ? cutNormalMean(varying.mean, varying.sd) : writtenMeanOf(varying);
}

/** mean + sd x density(a) / P(Z > a) with a = -mean / sd. */
function cutNormalMean(mean: number, sd: number): number {
  if (sd === 0) return mean;
  const a = -mean / sd;
  const density = Math.exp((-a * a) / 2) / Math.sqrt(2 * Math.PI);
  return mean + (sd * density) / standardNormalBelow(-a);
}
