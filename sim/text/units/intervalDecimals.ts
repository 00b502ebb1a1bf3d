/**
 * Decimals for a figure and both ends of its interval: behind the point the last digit stands for at most half of the
 * half-width, so that is written with one significant digit, or two where the first is a 1 (the rule for uncertainties of
 * Taylor, An Introduction to Error Analysis, 2nd ed. 1997, section 2.2). Whole numbers keep two digits of it: below 0 for
 * tens and hundreds. `halfWidth` above 0.
 *
 * @example intervalDecimals(0.034) // 2, as in "16.81 % (16.78 to 16.85 %)"
 */
export function intervalDecimals(halfWidth: number): number {
  const behindPoint = Math.ceil(-Math.log10(halfWidth / 2) - 1e-9);
  const twoDigits = 1 - Math.floor(Math.log10(halfWidth) + 1e-9);
  return Math.min(12, Math.max(behindPoint, Math.min(0, twoDigits)));
}
