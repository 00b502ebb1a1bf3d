import { uniformStream } from "../../random/index.ts";
import { formatP } from "../../statistics/index.ts";
import { CHECK_ALPHA, type Check, fine, look, notChecked } from "./check.ts";

const LEAST = 10;
const SHUFFLES = 999;

/** Correlation of each value with the next one: sum of (x_i - m)(x_(i+1) - m) over sum of (x_i - m)^2. NaN when nothing varies. */
export function lag1Correlation(ordered: readonly number[]): number {
  const mean = ordered.reduce((sum, value) => sum + value, 0) / ordered.length;
  let products = 0;
  let squares = 0;
  ordered.forEach((value, i) => {
    squares += (value - mean) ** 2;
    if (i > 0) products += (value - mean) * (ordered[i - 1]! - mean);
  });
  return products / squares;
}

/**
 * Whether a long time tends to be followed by a long one. The correlation is compared with those of 999 seeded shuffles
 * of the same times, so its error probability is exact whatever their distribution (Wald and Wolfowitz 1943).
 */
export function dependenceCheck(ordered: readonly number[], seed: string): Check {
  const name = "lag-1 correlation";
  if (ordered.length < LEAST) return notChecked(name, `Fewer than ${LEAST} times.`);
  const r = lag1Correlation(ordered);
  if (Number.isNaN(r)) return notChecked(name, "Nothing varies.");
  const p = shuffledP(ordered, r, seed);
  const figures = `${r.toFixed(2)} (${formatP(p)})`;
  if (p >= CHECK_ALPHA) return fine(name, `Each time says nothing of the next: correlation ${figures}.`, p);
  const worth = Math.max(1, Math.round((ordered.length * (1 - r)) / (1 + r)));
  const words =
    r > 0
      ? `Long times follow long ones: correlation ${figures}; ${ordered.length} such times are worth about ${worth}. A plan draws each time on its own.`
      : `Long times follow short ones: correlation ${figures}. Was the moment of reading late for one and early for the next?`;
  return look(name, words, p);
}

/** Without dependence the expected correlation is -1 / n: distances are taken from there. */
function shuffledP(ordered: readonly number[], r: number, seed: string): number {
  const uniforms = uniformStream(seed, 0, "lag-1 correlation", "shuffle");
  const centre = -1 / ordered.length;
  const seen = Math.abs(r - centre) * (1 - 1e-12);
  const values = [...ordered];
  let beyond = 0;
  for (let shuffle = 0; shuffle < SHUFFLES; shuffle++) {
    for (let i = values.length - 1; i > 0; i--) {
      const j = Math.floor(uniforms.next() * (i + 1));
      [values[i], values[j]] = [values[j]!, values[i]!];
    }
    if (Math.abs(lag1Correlation(values) - centre) >= seen) beyond++;
  }
  return (beyond + 1) / (SHUFFLES + 1);
}
