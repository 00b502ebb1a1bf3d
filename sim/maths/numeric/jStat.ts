import jstat from "jstat";
import { power } from "./power.ts";

const { normal, gamma, beta, studentt, gammaln } = jstat.jStat;

/**
 * The part of jStat that days and their statistics rest on, with the powers of `power`: its inverses begin their search
 * at a power, and where they end depends on it in the last digits.
 */
export const jStat = {
  /** Natural logarithm of the gamma function. */
  gammaln,
  normal: { inv: normal.inv, cdf: normal.cdf },
  gamma: { inv: withOwnPowers(gamma.inv), cdf: gamma.cdf },
  beta: { inv: withOwnPowers(beta.inv), cdf: beta.cdf },
  studentt: { inv: withOwnPowers(studentt.inv) },
};

/** The library takes its powers from `Math`, which has ours for as long as one call lasts: nothing else runs meanwhile. */
function withOwnPowers<Arguments extends number[]>(work: (...numbers: Arguments) => number) {
  return (...numbers: Arguments): number => {
    const before = Math.pow;
    Math.pow = power;
    try {
      return work(...numbers);
    } finally {
      Math.pow = before;
    }
  };
}
