/**
 * The root of a function between `low` and `high`, at which its signs differ. `at` gives value and slope. Newton's steps;
 * one that leaves the bracket is replaced by halving it, and after 30 steps only halving is done, so it always ends.
 * Right to 1e-15 of the root, or as near as the rounding of `at` lets it be.
 */
export function safeRoot(at: (x: number) => [value: number, slope: number], low: number, high: number): number {
  const lowIsNegative = at(low)[0] < 0;
  let [from, to] = [low, high];
  let x = (low + high) / 2;
  for (let step = 0; step < MAX_STEPS; step++) {
    const [value, slope] = at(x);
    if (value < 0 === lowIsNegative) from = x;
    else to = x;
    const next = x - value / slope;
    const inside = next > from && next < to && step < NEWTON_STEPS;
    // Newton's error is squared with each step, so after a step this short it is below the last bit.
    if (value === 0 || Math.abs(value / slope) <= SHORT * Math.abs(x)) return inside ? next : x;
    x = inside ? next : (from + to) / 2;
  }
  return x;
}

const NEWTON_STEPS = 30;
const MAX_STEPS = 120;
const SHORT = 1e-9;
