import { jStat } from "../numeric/index.ts";

/** Natural logarithm of "n over k", 0 <= k <= n. Logarithms because the factorials overflow from n = 171 on. */
export function logBinomial(n: number, k: number): number {
  return jStat.gammaln(n + 1) - jStat.gammaln(k + 1) - jStat.gammaln(n - k + 1);
}
