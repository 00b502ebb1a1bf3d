/** Two normal populations with one spread. */
export interface Mixture {
  /** Of the first population, which has the smaller mean. */
  share: number;
  means: [number, number];
  sd: number;
  logLikelihood: number;
}

const ROUNDS = 300;
/** Gain of the log-likelihood in a round below which the rounds end. */
const STILL = 1e-7;
/** Where the values are split for a start: a few and many below. */
const STARTS = [0.15, 0.35, 0.5, 0.65, 0.85];

/**
 * The likeliest mixture of two normal populations with a common standard deviation, by the EM algorithm (Dempster, Laird
 * and Rubin 1977; McLachlan and Peel 2000, ch. 3) from five starts. A common spread keeps the likelihood bounded.
 * `sorted`: ascending, two different values at least.
 */
export function fitMixture(sorted: Float64Array): Mixture {
  const fits = STARTS.map((start) => fromSplit(sorted, Math.max(1, Math.round(start * sorted.length))));
  return fits.reduce((best, fit) => (fit.logLikelihood > best.logLikelihood ? fit : best));
}

function fromSplit(sorted: Float64Array, split: number): Mixture {
  const at = Math.min(split, sorted.length - 1);
  let mixture = step(sorted, (i) => (i < at ? 1 : 0));
  for (let round = 0; round < ROUNDS; round++) {
    const { share, means, sd } = mixture;
    const odds = Math.log(share / (1 - share));
    // P(first population | x) is logistic in x when the spreads are equal.
    const slope = (means[0] - means[1]) / (sd * sd);
    const middle = (means[0] + means[1]) / 2;
    const next = step(sorted, (i) => 1 / (1 + Math.exp(-odds - slope * (sorted[i]! - middle))));
    if (!(next.share > 0 && next.share < 1 && next.sd > 0)) break;
    const gain = next.logLikelihood - mixture.logLikelihood;
    mixture = next;
    if (gain < STILL) break;
  }
  return mixture;
}

/** Parameters from the share of each value that belongs to the first population, with their log-likelihood. */
function step(sorted: Float64Array, first: (i: number) => number): Mixture {
  const n = sorted.length;
  let weight = 0;
  let [low, high] = [0, 0];
  const belongs = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const share = first(i);
    belongs[i] = share;
    weight += share;
    low += share * sorted[i]!;
    high += (1 - share) * sorted[i]!;
  }
  const means: [number, number] = [low / weight, high / (n - weight)];
  let squares = 0;
  for (let i = 0; i < n; i++) {
    squares += belongs[i]! * (sorted[i]! - means[0]) ** 2 + (1 - belongs[i]!) * (sorted[i]! - means[1]) ** 2;
  }
  const sd = Math.sqrt(squares / n);
  return { share: weight / n, means, sd, logLikelihood: logLikelihoodOf(sorted, weight / n, means, sd) };
}

function logLikelihoodOf(sorted: Float64Array, share: number, [low, high]: [number, number], sd: number): number {
  let sum = 0;
  for (const x of sorted) {
    const [a, b] = [(x - low) / sd, (x - high) / sd];
    sum += Math.log(share * Math.exp(-0.5 * a * a) + (1 - share) * Math.exp(-0.5 * b * b));
  }
  return sum - sorted.length * (Math.log(sd) + 0.5 * Math.log(2 * Math.PI));
}
