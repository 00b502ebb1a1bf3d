import type { Sample } from "./sample.ts";

/** A continuous distribution with its parameters in place. */
export interface Law {
  /** Natural logarithm of the density; -Infinity where there is none. */
  logDensity(x: number): number;
  /** P(X <= x). */
  below(x: number): number;
  /** Natural logarithm of P(X > x). */
  logAbove(x: number): number;
  /** The value with lower-tail probability `p`, 0 < p < 1. */
  quantile(p: number): number;
  mean: number;
  sd: number;
}

/** ln L: each ended time gives its density, each open one the probability to last longer (Kalbfleisch and Prentice 2002, ch. 3). */
export function logLikelihood(law: Law, { ended, open }: Sample): number {
  let sum = 0;
  for (const x of ended) sum += law.logDensity(x);
  for (const x of open) sum += law.logAbove(x);
  return sum;
}

/** ln(1 - below), for laws that have nothing better; good to 1e-15 of 1, and -690 at most. */
export function logOfRest(below: number): number {
  return Math.log(Math.max(1 - below, 1e-300));
}
