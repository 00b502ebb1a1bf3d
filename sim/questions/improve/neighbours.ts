import { type Counts, isAllowed, type Space } from "./space.ts";

/** Units that go from one element to another in one step. */
const STEPS = [1, 2];

/**
 * Designs one step away that are allowed: one or two units from one element to another, one unit more, one fewer. Of a
 * budget: one option more, one fewer, one in place of another.
 */
export function neighbours(space: Space, counts: Counts): Counts[] {
  const each = space.elements.map((_, index) => index);
  const moves = each.flatMap((index) => [
    [[index, 1] as const],
    [[index, -1] as const],
    ...each
      .filter((other) => other !== index)
      .flatMap((other) => STEPS.map((step) => [[index, step] as const, [other, -step] as const])),
  ]);
  return moves
    .map((move) => counts.map((count, index) => count + (move.find(([of]) => of === index)?.[1] ?? 0)))
    .filter((design) => isAllowed(space, design));
}
