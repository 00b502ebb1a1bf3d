/** Finer than any stopwatch: values are taken as whole numbers of this. */
const FINEST = 1e-6;

/**
 * The step to which times were noted: the greatest of which all of them are whole multiples (0.1 for 4.2, 5.1, 6.7; 0.5
 * for 4.5, 6.0). 0 where there is none of a millionth or more: times of a computer's clock.
 */
export function resolutionOf(values: Float64Array): number {
  let step = 0;
  for (const value of values) {
    const whole = Math.round(value / FINEST);
    if (Math.abs(value / FINEST - whole) > 1e-3 || !Number.isSafeInteger(whole)) return 0;
    step = commonDivisor(step, whole);
  }
  return step * FINEST;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
