import { standardNormalBelow } from "./quantile.ts";
import type { Varying } from "./varying.ts";

/** Mean of a varying quantity, in its own unit; for `normal` the mean after the cut at 0 (Johnson, Kotz and Balakrishnan 1994). */
export function meanOf(varying: Varying): number {
  switch (varying.family) {
    case "constant":
      return varying.value;
    case "uniform":
      return (varying.min + varying.max) / 2;
    case "triangular":
      return (varying.min + varying.mode + varying.max) / 3;
    case "pert":
      return (varying.min + 4 * varying.mode + varying.max) / 6;
    case "empirical":
      return varying.values.reduce((sum, value) => sum + value, 0) / varying.values.length;
    case "normal":
      return cutNormalMean(varying.mean, varying.sd);
    default:
      return varying.mean;
  }
}

/** mean + sd x density(a) / P(Z > a) with a = -mean / sd. */
function cutNormalMean(mean: number, sd: number): number {
  if (sd === 0) return mean;
  const a = -mean / sd;
  const density = Math.exp((-a * a) / 2) / Math.sqrt(2 * Math.PI);
  return mean + (sd * density) / standardNormalBelow(-a);
}
