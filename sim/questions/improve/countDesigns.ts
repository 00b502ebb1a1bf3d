import { isAllowed, isMoved, type Space } from "./space.ts";

/** How many designs are allowed: what a full enumeration would have to try. */
export function countDesigns(space: Space): number {
  if (isMoved(space)) return countMoved(space);
  return space.kind === "budget" ? countSets(space) : countShares(space);
}

/** Each element by itself, but for people who are bounded together. */
function countMoved({ elements, people }: Space): number {
  const together = new Set(people?.of.map(({ element }) => element));
  const free = elements.filter((_, index) => !together.has(index));
  const ways = free.reduce((product, { from, to }) => product * (to - from + 1), 1);
  if (people === undefined) return ways;
  const bounded = people.of.map(({ element, fewest }) => {
    const { from, to } = elements[element]!;
    return { from: from + fewest, to: to + fewest };
  });
  return ways * waysToShare(bounded, people.most).reduce((sum, count) => sum + count, 0);
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

function countShares({ elements, least, most }: Space): number {
  return waysToShare(elements, most)
    .slice(least)
    .reduce((sum, count) => sum + count, 0);
}

/** By total, from none to the most: the ways to share it out, element by element. */
function waysToShare(elements: readonly { from: number; to: number }[], most: number): number[] {
  let ways = [1, ...Array.from({ length: most }, () => 0)];
  for (const { from, to } of elements) {
    const sums = [0];
    for (const count of ways) sums.push(sums.at(-1)! + count);
    ways = ways.map((_, total) => (sums[Math.max(0, total - from + 1)] ?? 0) - (sums[Math.max(0, total - to)] ?? 0));
  }
  return ways;
}
