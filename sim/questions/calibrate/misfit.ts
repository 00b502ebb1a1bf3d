/** How far simulated days lie from the observed ones: each quantity's difference in standard errors. */
export interface Yardstick {
  /** Means of the observed days; null for a quantity that cannot be compared. */
  targets: (number | null)[];
  /** Standard errors of the differences of the plan as it is; they stay the measure for every move. */
  errors: number[];
}

/** Mean of each quantity's days; null where no day has a value. */
export function meansOf(values: readonly (readonly (number | null)[])[]): (number | null)[] {
  return values.map((days) => {
    const present = days.filter((value) => value !== null);
    return present.length === 0 ? null : present.reduce((sum, value) => sum + value, 0) / present.length;
  });
}

/** (target - mean) / error of each quantity; 0 where there is nothing to compare. */
export function gapsOf(means: readonly (number | null)[], { targets, errors }: Yardstick): number[] {
  return targets.map((target, i) => {
    const mean = means[i];
    return target === null || mean === null || mean === undefined ? 0 : (target - mean) / errors[i]!;
  });
}

/** Sum of squares. */
export function misfitOf(gaps: readonly number[]): number {
  return gaps.reduce((sum, gap) => sum + gap * gap, 0);
}

/**
 * How many times a move would have to be made, were its effects straight, for the smallest misfit: gaps before, and the
 * changes of the means that it made, both in standard errors. 0 when it changed nothing.
 */
export function bestMultiple(gaps: readonly number[], changes: readonly number[]): number {
  const squares = misfitOf(changes);
  return squares === 0 ? 0 : gaps.reduce((sum, gap, i) => sum + gap * changes[i]!, 0) / squares;
}
