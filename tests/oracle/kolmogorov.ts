/** Largest distance between the empirical distribution function of the values and `cdf`. */
export function kolmogorovDistance(
  values: readonly number[],
  cdf: (x: number) => number,
): { distance: number; n: number } {
  const sorted = Float64Array.from(values).sort();
  const n = sorted.length;
  let distance = 0;
  sorted.forEach((value, i) => {
    const below = cdf(value);
    distance = Math.max(distance, (i + 1) / n - below, below - i / n);
  });
  return { distance, n };
}

/** P(sqrt(n) D > x) for large n (Kolmogorov 1933): 2 sum of (-1)^(k-1) exp(-2 k^2 x^2). */
export function kolmogorovBeyond(x: number): number {
  if (x < 0.2) return 1;
  let sum = 0;
  for (let k = 1; k < 100; k++) sum += 2 * (k % 2 === 1 ? 1 : -1) * Math.exp(-2 * k * k * x * x);
  return sum;
}
