import { jStat } from "../../numeric/index.ts";
import { formatP, quantile } from "../../statistics/index.ts";
import { CHECK_ALPHA, type Check, fine, look, notChecked } from "./check.ts";

const LEAST = 10;

/**
 * Two-sided p-value of the number of runs in a row of `above` and `below` signs, exact (Wald and Wolfowitz 1940; Swed and
 * Eisenhart 1943, Annals of Mathematical Statistics 14): twice the smaller tail, 1 at most.
 */
export function runsTest(runs: number, above: number, below: number): number {
  let lower = 0;
  let upper = 0;
  for (let r = 2; r <= 2 * Math.min(above, below) + 1; r++) {
    const probability = runsProbability(r, above, below);
    if (r <= runs) lower += probability;
    if (r >= runs) upper += probability;
  }
  return Math.min(1, 2 * Math.min(lower, upper));
}

function runsProbability(runs: number, above: number, below: number): number {
  const k = Math.floor(runs / 2);
  const all = logChoose(above + below, above);
  const ways = (a: number, b: number) => Math.exp(logChoose(above - 1, a) + logChoose(below - 1, b) - all);
  return runs % 2 === 0 ? 2 * ways(k - 1, k - 1) : ways(k - 1, k) + ways(k, k - 1);
}

function logChoose(n: number, k: number): number {
  if (k < 0 || k > n) return Number.NEGATIVE_INFINITY;
  return jStat.gammaln(n + 1) - jStat.gammaln(k + 1) - jStat.gammaln(n - k + 1);
}

/** Whether times above and below the median alternate as they would by chance; those at the median are left out. */
export function runsCheck(ordered: readonly number[]): Check {
  const name = "runs";
  const median = quantile(
    [...ordered].sort((a, b) => a - b),
    0.5,
  );
  const signs = ordered.filter((value) => value !== median).map((value) => value > median!);
  const above = signs.filter((sign) => sign).length;
  const below = signs.length - above;
  if (signs.length < LEAST || above === 0 || below === 0) {
    return notChecked(name, `Fewer than ${LEAST} times beside the median.`);
  }
  const runs = 1 + signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
  const expected = 1 + (2 * above * below) / signs.length;
  const p = runsTest(runs, above, below);
  const figures = `${runs} runs above and below the median, ${expected.toFixed(1)} expected by chance (${formatP(p)})`;
  if (p >= CHECK_ALPHA) return fine(name, `${figures}.`, p);
  const words = runs < expected ? "Times come in stretches" : "Times alternate";
  return look(name, `${words}: ${figures}. What changed between them?`, p);
}
