import { unknownFamily, type Varying } from "./varying.ts";

/** Mean of a varying quantity as a plan states it, in its own unit; for `normal` before the cut at 0, so a little low. */
export function writtenMeanOf(varying: Varying): number {
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
    case "exponential":
    case "lognormal":
    case "gamma":
    case "weibull":
    case "erlang":
    case "normal":
      return varying.mean;
    default:
      throw unknownFamily(varying);
  }
}
