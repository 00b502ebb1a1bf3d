/**
 * Sum of the values with the rounding error of every addition carried along (Neumaier 1974, ZAMM 54): the error of the
 * result does not grow with the number of values. 0 for an empty list; not-finite values give what plain addition
 * gives.
 *
 * @example compensatedSum([1, 1e100, 1, -1e100]) // 2; plain addition gives 0
 */
export function compensatedSum(values: Iterable<number>): number {
  let sum = 0;
  let lost = 0;
  for (const value of values) {
    const next = sum + value;
    lost += Math.abs(sum) >= Math.abs(value) ? sum - next + value : value - next + sum;
    sum = next;
  }
  return Number.isFinite(sum) ? sum + lost : sum;
}
