/**
 * The observations of antithetic days: the mean of days 0 and 1, of days 2 and 3 and so on (Hammersley and Morton 1956,
 * Proceedings of the Cambridge Philosophical Society 52). A pair with a null in it is null. An odd number of days is
 * refused with a RangeError.
 *
 * @example pairMeans([610, 590, 604, 600]) // [600, 602]
 */
export function pairMeans(days: readonly (number | null)[]): (number | null)[] {
  if (days.length % 2 !== 0) throw new RangeError(`pairMeans: ${days.length} days; antithetic days come in pairs`);
  return Array.from({ length: days.length / 2 }, (_, pair) => {
    const first = days[2 * pair]!;
    const second = days[2 * pair + 1]!;
    return first === null || second === null ? null : first / 2 + second / 2;
  });
}
