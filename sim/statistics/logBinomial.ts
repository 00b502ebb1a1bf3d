import jstat from "jstat";

/** Natural logarithm of "n over k", 0 <= k <= n. Logarithms because the factorials overflow from n = 171 on. */
export function logBinomial(n: number, k: number): number {
  return jstat.jStat.gammaln(n + 1) - jstat.jStat.gammaln(k + 1) - jstat.jStat.gammaln(n - k + 1);
}
