import type { Varying } from "../../../maths/random/index.ts";

/** Digits of a coefficient of variation. */
const DIGITS = 4;

/**
 * A distribution in the plan's own syntax, its lengths with `unit`. They are rounded to a thousandth of the standard
 * deviation, far below what any sample can tell.
 */
export function planValue(varying: Varying, unit: string, sd: number): unknown {
  const decimals = sd > 0 ? Math.min(12, Math.max(0, 3 - Math.floor(Math.log10(sd)))) : 6;
  const quantity = (value: number) => `${Number(value.toFixed(decimals))} ${unit}`;
  switch (varying.family) {
    case "constant":
      return quantity(varying.value);
    case "exponential":
      return { exponential: { mean: quantity(varying.mean) } };
    case "erlang":
      return { erlang: { mean: quantity(varying.mean), k: varying.k } };
    case "normal":
      return { normal: { mean: quantity(varying.mean), sd: quantity(varying.sd) } };
    case "uniform":
      return { uniform: { min: quantity(varying.min), max: quantity(varying.max) } };
    case "triangular":
    case "pert": {
      const { min, mode, max } = varying;
      return { [varying.family]: { min: quantity(min), mode: quantity(mode), max: quantity(max) } };
    }
    case "empirical":
      return { empirical: varying.values.map((value) => `${value} ${unit}`) };
    default:
      return { [varying.family]: { mean: quantity(varying.mean), cv: Number(varying.cv.toPrecision(DIGITS)) } };
  }
}
