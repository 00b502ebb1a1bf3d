import { jStat } from "../../../maths/numeric/index.ts";
import { formatP } from "../../../maths/statistics/index.ts";
import { kaplanMeier } from "../kaplanMeier.ts";
import { sampleOf } from "../sample.ts";
import type { OrderedTime } from "./censoredTrend.ts";
import { type Check, found, notChecked } from "./check.ts";

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

/**
 * Whether times above and below the median alternate as they would by chance; those at the median are left out. Open
 * times: the median is Kaplan and Meier's, and those that are open at or below it are left out, as their side is not known.
 */
export function runsCheck(ordered: readonly OrderedTime[]): Check {
  const name = "runs";
  const median = medianOf(ordered);
  if (median === null)
    return notChecked(name, "Too many times are open: half of them or more may lie above any length.");
  const sided = ordered.filter(({ value, open }) => value > median || (value < median && !open));
  const signs = sided.map(({ value }) => value > median);
  const above = signs.filter((sign) => sign).length;
  const below = signs.length - above;
  if (signs.length < LEAST || above === 0 || below === 0) {
    return notChecked(name, `Fewer than ${LEAST} times on either side of the median.`);
  }
  const runs = 1 + signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length;
  const expected = 1 + (2 * above * below) / signs.length;
  const p = runsTest(runs, above, below);
  const left = ordered.filter(({ value, open }) => open && value <= median).length;
  const without = left === 0 ? "" : `; ${left} open ones left out`;
  const figures = `${runs} runs above and below the median, ${expected.toFixed(1)} expected by chance (${formatP(p)}${without})`;
  const words = runs < expected ? "Times come in stretches" : "Times alternate";
  return found(name, p, { told: `${words}: ${figures}. What changed between them?`, fine: `${figures}.` });
}

/** The middle between the two times at the half where the steps stop there, as of complete times. */
function medianOf(ordered: readonly OrderedTime[]): number | null {
  const of = (wanted: boolean) => ordered.filter(({ open }) => open === wanted).map(({ value }) => value);
  const steps = kaplanMeier(sampleOf(of(false), of(true)));
  const at = steps.findIndex(({ after }) => after >= 0.5 - 1e-12);
  if (at === -1) return null;
  const next = steps[at + 1];
  return steps[at]!.after <= 0.5 + 1e-12 && next !== undefined ? (steps[at]!.time + next.time) / 2 : steps[at]!.time;
}
