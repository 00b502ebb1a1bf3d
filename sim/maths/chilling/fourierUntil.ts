import { safeRoot } from "../numeric/index.ts";
import { SMALLEST_FOURIER, sumOf, termsAt } from "./excessShare.ts";
import { type SeriesTerm, type Shape, seriesTerms } from "./seriesTerms.ts";

/**
 * Fourier number at which the centre's excess over the air has fallen to `share` of the first one (above 0, below 1).
 * Relative error 1e-12. Uses the whole series.
 */
export function fourierUntil(shape: Shape, biot: number, share: number): number {
  const first = seriesTerms(shape, biot, 1)[0]!;
  // Where the first term says so much, it is off by 0.02 at most, and few terms will do.
  const guess = Math.log(first.centre / share) / (first.root * first.root);
  const low = guess > 0.25 ? 0.6 * guess : SMALLEST_FOURIER;
  const terms = seriesTerms(shape, biot, termsAt(low));
  const logExcess = (fourier: number): [number, number] => {
    const value = sumOf(terms, fourier, "centre");
    return [Math.log(value / share), slope(terms, fourier) / value];
  };
  return logExcess(low)[0] <= 0 ? low : safeRoot(logExcess, low, Math.max(guess, 0) + 0.5);
}

function slope(terms: readonly SeriesTerm[], fourier: number): number {
  return terms.reduce((sum, { root, centre }) => sum - root * root * centre * Math.exp(-root * root * fourier), 0);
}
