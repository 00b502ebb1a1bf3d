import { unknownFamily, type Varying } from "../varying/index.ts";

/** The same distribution stretched by a factor: mean and spread alike, the coefficient of variation kept. */
export function timesAsLong(varying: Varying, factor: number): Varying {
  switch (varying.family) {
    case "constant":
      return { ...varying, value: varying.value * factor };
    case "uniform":
      return { ...varying, min: varying.min * factor, max: varying.max * factor };
    case "triangular":
    case "pert":
      return { ...varying, min: varying.min * factor, mode: varying.mode * factor, max: varying.max * factor };
    case "empirical":
      return { ...varying, values: varying.values.map((value) => value * factor) };
    case "normal":
      return { ...varying, mean: varying.mean * factor, sd: varying.sd * factor };
    case "exponential":
    case "lognormal":
    case "gamma":
    case "weibull":
    case "erlang":
      return { ...varying, mean: varying.mean * factor };
    default:
      throw unknownFamily(varying);
  }
}
