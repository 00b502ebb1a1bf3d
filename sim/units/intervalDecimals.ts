/**
 * Decimals for a figure and both ends of its interval: the last digit stands for at most half of the half-width, so the
 * half-width is written with one significant digit, or two where the first is a 1 (the rule for uncertainties of Taylor,
 * An Introduction to Error Analysis, 2nd ed. 1997, section 2.2). Below 0 for tens and hundreds. `halfWidth` above 0.
 *
 * @example intervalDecimals(0.034) // 2, as in "16.81 % (16.78 to 16.85 %)"
 */
export function intervalDecimals(halfWidth: number): number {
  return Math.min(12, Math.ceil(-Math.log10(halfWidth / 2) - 1e-9));
}
