/**
 * A number for people: so many significant digits (3 unless said), digits before the point never rounded away, no
 * trailing zeros, no exponent between 1e-6 and 1e21, a decimal point in every country. NaN and infinities: RangeError.
 */
export function formatNumber(value: number, significantDigits = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`formatNumber: ${value} is not a finite number`);
  if (Math.abs(value) >= 10 ** (significantDigits - 1)) return String(Math.round(value) + 0);
  return String(Number(value.toPrecision(significantDigits)) + 0);
}
