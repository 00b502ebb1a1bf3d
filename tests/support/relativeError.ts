/** |found - expected| / |expected|; the absolute error where 0 is expected. */
export function relativeError(found: number, expected: number): number {
  return Math.abs(found - expected) / (expected === 0 ? 1 : Math.abs(expected));
}
