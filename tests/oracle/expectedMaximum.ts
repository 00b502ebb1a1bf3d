import { cephes } from "../support/cephes.ts";

/**
 * E[max(X, Y)] of independent non-negative quantities, from their distribution functions: the integral of
 * 1 - F(x) G(x), by Simpson's rule on 40,000 steps up to where less than 1e-13 is left. Good to about 1e-7 relative when
 * both are continuous.
 */
export function expectedMaximum(first: (x: number) => number, second: (x: number) => number, scale: number): number {
  const beyond = (x: number) => 1 - first(x) * second(x);
  let end = scale;
  while (beyond(end) > 1e-13) end *= 1.25;
  const steps = 40_000;
  const width = end / steps;
  let sum = beyond(0) + beyond(end);
  for (let step = 1; step < steps; step++) sum += (step % 2 === 1 ? 4 : 2) * beyond(step * width);
  return (sum * width) / 3;
}

/** P(repairs during one unit of work last no longer than x): Poisson failures, exponential repairs. */
export function repairTimeBelow(x: number, failure: number, meanRepair: number): number {
  let weight = Math.exp(-failure);
  let sum = weight;
  for (let failures = 1; failures < 12; failures++) {
    weight *= failure / failures;
    sum += weight * cephes.igam(failures, x / meanRepair);
  }
  return sum;
}
