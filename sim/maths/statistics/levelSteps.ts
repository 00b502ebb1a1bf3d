import { compensatedSum } from "./compensatedSum.ts";
import { estimate } from "./estimate.ts";

/** What going from one level of a factor to the next did to a response. */
export interface LevelStep {
  /** Indices into the factor's levels, neighbours in the order of the study. */
  from: number;
  to: number;
  n: number;
  mean: number;
  /** Interval that holds for all steps of all factors of the response at once; null with one observation. */
  low: number | null;
  high: number | null;
  /** That interval leaves 0 out. */
  shown: boolean;
  /** How many steps hold at once. */
  comparisons: number;
}

/**
 * Main effects from level to level: for each factor, the paired difference between neighbouring levels, averaged over
 * those settings of the other factors that were run with every level of this one (in a full factorial all of them; where
 * one factor is changed at a time, the base). `levels[variant][factor]`, -1 where a variant lies on no level;
 * `values[variant][observation]` on common random numbers, null where there is none: such an observation is left out.
 * Null for a factor without such a setting, or without an observation.
 *
 * Intervals are Student t over observations with Bonferroni's correction for the number of steps (Dunn 1961). An average
 * over settings hides what the factors do to each other: look at the response by both of them.
 */
export function levelSteps(
  levels: readonly (readonly number[])[],
  values: readonly (readonly (number | null)[])[],
  confidence: number,
): (LevelStep[] | null)[] {
  const factors = levels[0]?.length ?? 0;
  const profiles = Array.from({ length: factors }, (_, factor) => profile(levels, values, factor));
  const comparisons = profiles.reduce((sum, rows) => sum + Math.max(0, rows.length - 1), 0);
  if (comparisons === 0) return profiles.map(() => null);
  const single = 1 - (1 - confidence) / comparisons;
  return profiles.map((rows) => stepsOf(rows, single, comparisons));
}

/** Mean over settings of the others, by level of one factor and observation; empty without a whole setting. */
function profile(
  levels: readonly (readonly number[])[],
  values: readonly (readonly (number | null)[])[],
  factor: number,
): (number | null)[][] {
  const settings = new Map<string, Map<number, readonly (number | null)[]>>();
  let count = 0;
  levels.forEach((own, variant) => {
    count = Math.max(count, own[factor]! + 1);
    if (own.some((level) => level < 0)) return;
    const others = own.filter((_, index) => index !== factor).join();
    const rows = settings.get(others) ?? new Map();
    settings.set(others, rows.set(own[factor]!, values[variant]!));
  });
  const whole = [...settings.values()].filter((rows) => rows.size === count);
  if (whole.length === 0) return [];
  return Array.from({ length: count }, (_, level) => meanRow(whole.map((rows) => rows.get(level)!)));
}

function meanRow(rows: readonly (readonly (number | null)[])[]): (number | null)[] {
  const observations = Math.min(...rows.map(({ length }) => length));
  return Array.from({ length: observations }, (_, index) => {
    const column = rows.map((row) => row[index]!);
    return column.some((value) => value === null) ? null : compensatedSum(column as number[]) / column.length;
  });
}

function stepsOf(rows: readonly (number | null)[][], confidence: number, comparisons: number): LevelStep[] | null {
  const steps = rows.slice(1).flatMap((row, index): LevelStep[] => {
    const paired = row.map((value, at) => {
      const before = rows[index]![at] ?? null;
      return value === null || before === null ? null : value - before;
    });
    const found = estimate(paired, confidence);
    if (found === null) return [];
    const { n, mean, low, high } = found;
    const shown = low !== null && high !== null && (low > 0 || high < 0);
    return [{ from: index, to: index + 1, n, mean, low, high, shown, comparisons }];
  });
  return steps.length > 0 && steps.length === rows.length - 1 ? steps : null;
}
