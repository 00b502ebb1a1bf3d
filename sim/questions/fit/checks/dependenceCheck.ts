import { uniformStream } from "../../../maths/random/index.ts";
import { formatP } from "../../../maths/statistics/index.ts";
import type { OrderedTime } from "./censoredTrend.ts";
import { type Check, found, notChecked } from "./check.ts";

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
 * of the same times, so its error probability is exact whatever their distribution (Wald and Wolfowitz 1943). Open times
 * among them: each time counts by its log-rank score (Peto and Peto 1972), which every time has, in place of its length.
 */
export function dependenceCheck(ordered: readonly OrderedTime[], seed: string): Check {
  const name = "lag-1 correlation";
  if (ordered.length < LEAST) return notChecked(name, `Fewer than ${LEAST} times.`);
  const someOpen = ordered.some(({ open }) => open);
  const values = someOpen ? logRankScores(ordered) : ordered.map(({ value }) => value);
  const r = lag1Correlation(values);
  if (Number.isNaN(r)) return notChecked(name, "Nothing varies.");
  const p = shuffledP(values, r, seed);
  const figures = `${r.toFixed(2)}${someOpen ? " of log-rank scores, open times taken in" : ""} (${formatP(p)})`;
  const worth = Math.max(1, Math.round((ordered.length * (1 - r)) / (1 + r)));
  const told =
    r > 0
      ? `Long times follow long ones: correlation ${figures}; these ${ordered.length} times tell as much as about ${worth} independent ones. A plan draws each time by itself.`
      : `Long times follow short ones: correlation ${figures}. Was one time read late, and the next therefore early?`;
  return found(name, p, { told, fine: `A time says nothing about the next one: correlation ${figures}.` });
}

/** Hazard summed up to each time, less 1 for those that ended: high for long times (Nelson 1969; Peto and Peto 1972). */
export function logRankScores(times: readonly OrderedTime[]): number[] {
  const ended = [...new Set(times.filter(({ open }) => !open).map(({ value }) => value))];
  const steps = ended.map((at) => {
    const atRisk = times.filter(({ value }) => value >= at).length;
    return { at, hazard: times.filter(({ value, open }) => !open && value === at).length / atRisk };
  });
  return times.map(({ value, open }) => {
    const summed = steps.reduce((sum, { at, hazard }) => sum + (at <= value ? hazard : 0), 0);
    return summed - (open ? 0 : 1);
  });
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
