import { power } from "../numeric/index.ts";

/** The two constants of the procedure of Kim and Nelson. */
export interface KimNelsonConstants {
  eta: number;
  /** h squared. */
  hSquared: number;
}

/**
 * Constants for choosing the best of `k` systems with error probability `alpha` after a first stage of `n0` (Kim and
 * Nelson 2001, ACM TOMACS 11(3) 251-273, with c = 1; the form from memory): eta = ((2 alpha / (k - 1))^(-2/(n0 - 1)) - 1) / 2 and
 * h^2 = 2 eta (n0 - 1). The division of alpha by k - 1 holds whatever the systems have in common, common random numbers
 * included.
 *
 * `k` and `n0` whole and 2 or more, 0 < `alpha` < (k - 1)/2 and below 1, else a RangeError.
 *
 * @example kimNelsonConstants(5, 10, 0.05) // eta 0.634967, hSquared 11.429411
 */
export function kimNelsonConstants(k: number, n0: number, alpha: number): KimNelsonConstants {
  if (!(k >= 2)) throw new RangeError(`kimNelsonConstants: ${k} systems; at least 2 are needed`);
  if (!(n0 >= 2)) throw new RangeError(`kimNelsonConstants: a first stage of ${n0}; at least 2 are needed`);
  if (!(alpha > 0 && alpha < Math.min(1, (k - 1) / 2)))
    throw new RangeError(
      `kimNelsonConstants: alpha is ${alpha}; it must lie between 0 and ${Math.min(1, (k - 1) / 2)}`,
    );
  const eta = (power((2 * alpha) / (k - 1), -2 / (n0 - 1)) - 1) / 2;
  return { eta, hSquared: 2 * eta * (n0 - 1) };
}
