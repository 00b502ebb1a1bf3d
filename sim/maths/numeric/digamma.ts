/** From here on the asymptotic series below are good to the last bits. */
const FAR = 10;

/**
 * Derivative of ln gamma(x), for x > 0; anything else is NaN. Recurrence up to 10, then the asymptotic series
 * (Abramowitz and Stegun 1964, 6.3.5 and 6.3.18). Error under 1e-13 of the larger of 1 and the value (tested against
 * exact values and the difference equation).
 */
export function digamma(x: number): number {
  if (!(x > 0)) return Number.NaN;
  let sum = 0;
  let at = x;
  for (; at < FAR; at++) sum -= 1 / at;
  const t = 1 / (at * at);
  const series = t * (1 / 12 - t * (1 / 120 - t * (1 / 252 - t * (1 / 240 - t * (1 / 132 - t * (691 / 32760))))));
  return sum + Math.log(at) - 0.5 / at - series;
}

/** Derivative of `digamma`, for x > 0 (Abramowitz and Stegun 1964, 6.4.6 and 6.4.12). Relative error under 1e-12. */
export function trigamma(x: number): number {
  if (!(x > 0)) return Number.NaN;
  let sum = 0;
  let at = x;
  for (; at < FAR; at++) sum += 1 / (at * at);
  const t = 1 / (at * at);
  const series = t * (1 / 6 - t * (1 / 30 - t * (1 / 42 - t * (1 / 30 - t * (5 / 66 - t * (691 / 2730))))));
  return sum + 1 / at + 0.5 * t + series / at;
}
