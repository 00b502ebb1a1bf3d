import type { Guide } from "./guide.ts";
import { type Counts, isAllowed, isPossible, type Space, spent } from "./space.ts";

/**
 * The plan as it is, brought within the bounds and the total: what is worth least is taken away first, what is worth most
 * is added first, up to `upTo` of the total. Null where that leads to nothing that is allowed.
 */
export function nearestAllowed(space: Space, guideOf: (counts: Counts) => Guide, upTo: number): Counts | null {
  let counts: Counts = space.elements.map(({ from, to }, index) =>
    Math.min(to, Math.max(from, space.base[index] ?? to)),
  );
  while (spent(space, counts) > space.most) {
    const worth = guideOf(counts).fewer.map((seconds, index) =>
      counts[index]! > space.elements[index]!.from ? -seconds : Number.NEGATIVE_INFINITY,
    );
    const index = greatest(worth);
    if (index === -1) return null;
    counts = counts.with(index, counts[index]! - 1);
  }
  for (;;) {
    const now = counts;
    const worth = guideOf(now).more.map((seconds, index) => {
      const { to, price } = space.elements[index]!;
      const fits = now[index]! < to && spent(space, now) + price <= upTo;
      const next = now.with(index, now[index]! + 1);
      return fits && isPossible(space, next) ? seconds / Math.max(price, 1) : Number.NEGATIVE_INFINITY;
    });
    const index = greatest(worth);
    if (index === -1) return isAllowed(space, now) ? now : null;
    counts = now.with(index, now[index]! + 1);
  }
}

/** Index of the greatest value, the first of equal ones; -1 when all are minus infinity. */
function greatest(values: readonly number[]): number {
  let best = -1;
  for (const [index, value] of values.entries()) {
    if (value > (best === -1 ? Number.NEGATIVE_INFINITY : values[best]!)) best = index;
  }
  return best;
}
