/** Where a function is least, as far as it was found. */
export interface Minimum {
  at: number[];
  value: number;
}

interface Corner {
  at: number[];
  value: number;
}

const MAX_STEPS = 2000;
const ROUNDING = 1e-13;

/**
 * A local minimum of a function of few variables without its derivatives (Nelder and Mead 1965, The Computer Journal 7,
 * with their reflection 1, expansion 2, contraction and shrinking 1/2). The first simplex is `start` and `start` moved by
 * each of `steps` in turn; after it has closed in, it is opened once more around the best corner, as a simplex can fall
 * flat. Infinity marks places that are not allowed; NaN is taken for Infinity. `start` itself must be allowed.
 *
 * It ends when the values at all corners are the same to `tolerance`, relative to the larger of 1 and themselves; 1e-13
 * when left out, which finds a smooth minimum to about 1e-6 of the steps.
 */
export function nelderMead(
  of: (at: readonly number[]) => number,
  start: readonly number[],
  steps: readonly number[],
  tolerance = ROUNDING,
): Minimum {
  const first = closeIn(of, start, steps, tolerance);
  const again = steps.map((step) => step / 8);
  return closeIn(of, first.at, again, tolerance);
}

function closeIn(
  of: (at: readonly number[]) => number,
  start: readonly number[],
  steps: readonly number[],
  tolerance: number,
): Minimum {
  const corner = (at: number[]): Corner => {
    const value = of(at);
    return { at, value: Number.isNaN(value) ? Number.POSITIVE_INFINITY : value };
  };
  const corners = [
    corner([...start]),
    ...steps.map((step, moved) => corner(start.map((x, axis) => (axis === moved ? x + step : x)))),
  ];
  for (let step = 0; step < MAX_STEPS; step++) {
    corners.sort((a, b) => a.value - b.value);
    if (isClosed(corners, tolerance)) break;
    replaceWorst(corners, corner);
  }
  return corners.sort((a, b) => a.value - b.value)[0]!;
}

function isClosed(corners: readonly Corner[], tolerance: number): boolean {
  const [best, worst] = [corners[0]!.value, corners.at(-1)!.value];
  return worst - best <= tolerance * Math.max(1, Math.abs(best));
}

function replaceWorst(corners: Corner[], corner: (at: number[]) => Corner): void {
  const last = corners.length - 1;
  const worst = corners[last]!;
  const others = corners.slice(0, last);
  const middle = worst.at.map((_, axis) => others.reduce((sum, { at }) => sum + at[axis]!, 0) / last);
  const along = (by: number) => corner(middle.map((x, axis) => x + by * (worst.at[axis]! - x)));
  const reflected = along(-1);
  if (reflected.value < corners[0]!.value) {
    const expanded = along(-2);
    corners[last] = expanded.value < reflected.value ? expanded : reflected;
    return;
  }
  if (reflected.value < corners[last - 1]!.value) {
    corners[last] = reflected;
    return;
  }
  const contracted = along(reflected.value < worst.value ? -0.5 : 0.5);
  if (contracted.value < Math.min(reflected.value, worst.value)) {
    corners[last] = contracted;
    return;
  }
  const best = corners[0]!;
  for (let i = 1; i <= last; i++) {
    corners[i] = corner(corners[i]!.at.map((x, axis) => (x + best.at[axis]!) / 2));
  }
}
