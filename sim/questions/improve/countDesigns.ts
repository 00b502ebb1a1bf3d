import { isAllowed, type Space } from "./space.ts";

/** How many designs are allowed: what a full enumeration would have to try. */
export function countDesigns(space: Space): number {
  if (space.kind === "times") return space.elements.reduce((ways, { from, to }) => ways * (to - from + 1), 1);
  return space.kind === "budget" ? countSets(space) : countShares(space);
}

/** Every set of options is looked at: there are 2^16 at most. */
function countSets(space: Space): number {
  const options = space.elements.length;
  let count = 0;
  for (let set = 0; set < 2 ** options; set++) {
    const counts = Array.from({ length: options }, (_, option) => (set >> option) & 1);
    if (isAllowed(space, counts)) count++;
  }
  return count;
}

/** Ways to share out each total, element by element. */
function countShares({ elements, least, most }: Space): number {
  let ways = [1, ...Array.from({ length: most }, () => 0)];
  for (const { from, to } of elements) {
    const sums = [0];
    for (const count of ways) sums.push(sums.at(-1)! + count);
    ways = ways.map((_, total) => (sums[Math.max(0, total - from + 1)] ?? 0) - (sums[Math.max(0, total - to)] ?? 0));
  }
  return ways.slice(least).reduce((sum, count) => sum + count, 0);
}
