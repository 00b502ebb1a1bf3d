import type { CandidateDesign, Designs } from "./designs.ts";
import type { Counts, Space } from "./space.ts";
import { isPossible, spent } from "./space.ts";

/** Promises that one path may ask for, about. */
const MAX_ASKED = 60;

/**
 * From the fewest of everything up to the total: each step adds where the promise grows most for what it takes of the
 * total. Every design on the way, the smallest first. Steps are of one unit, of several where there are many.
 */
export function greedyPath(
  space: Space,
  designs: Designs,
  promise: (design: CandidateDesign) => number,
): CandidateDesign[] {
  const path: CandidateDesign[] = [];
  let counts: Counts = space.elements.map(({ from }) => from);
  const unit = unitOf(space, counts);
  for (;;) {
    const now = designs.of(counts);
    if (now !== null) path.push(now);
    const next = bestStep(space, counts, unit, { designs, promise, from: now === null ? 0 : promise(now) });
    if (next === null) return path;
    counts = next;
  }
}

function unitOf(space: Space, counts: Counts): number {
  if (space.kind === "budget") return 1;
  return Math.max(1, Math.ceil(((space.most - spent(space, counts)) * space.elements.length) / MAX_ASKED));
}

interface Step {
  designs: Designs;
  promise: (design: CandidateDesign) => number;
  /** Promise before the step. */
  from: number;
}

function bestStep(space: Space, counts: Counts, unit: number, { designs, promise, from }: Step): Counts | null {
  const room = space.most - spent(space, counts);
  let best: { counts: Counts; gain: number } | null = null;
  for (const [index, { to, price }] of space.elements.entries()) {
    const more = Math.min(unit, to - counts[index]!, price === 0 ? unit : Math.floor(room / price));
    const next = counts.with(index, counts[index]! + more);
    if (more < 1 || !isPossible(space, next)) continue;
    const design = designs.of(next);
    const gain = design === null ? Number.NEGATIVE_INFINITY : (promise(design) - from) / (more * Math.max(price, 1));
    if (best === null || gain > best.gain) best = { counts: next, gain };
  }
  return best?.counts ?? null;
}

/** The last design of the path that takes no more than each level; levels from the fewest to the total, evenly. */
export function atLevels(path: readonly CandidateDesign[], levels: readonly number[]): CandidateDesign[] {
  const found = levels.map((level) => path.findLast((design) => design.spent! <= level));
  return [...new Set(found.filter((design) => design !== undefined))];
}

/** `points` totals from the fewest that designs take to the most. */
export function levelsOf(space: Space, points: number): number[] {
  const fewest = spent(
    space,
    space.elements.map(({ from }) => from),
  );
  return Array.from({ length: points }, (_, point) => {
    const level = fewest + ((space.most - fewest) * point) / Math.max(1, points - 1);
    return space.kind === "budget" ? level : Math.round(level);
  });
}
