import { fewestPeople } from "./fewestPeople.ts";
import type { Balance, Tasks } from "./tasks.ts";

/** Relative; the cycle told is that of the posts found, so times in whole seconds give whole seconds. */
const CLOSE = 1e-9;

/**
 * The shortest cycle in which so many people do all tasks (assembly line balancing, type 2), and who then does what: bisection over the
 * cycle, each time the fewest people by `fewestPeople`. The cycle is the load of the busiest person. Null where people are fewer than 1.
 */
export function leastCycle(tasks: Tasks, people: number): { cycleSeconds: number; balance: Balance } | null {
  if (people < 1) return null;
  const work = tasks.seconds.reduce((sum, seconds) => sum + seconds, 0);
  const walking = tasks.walking.reduce((sum, seconds) => sum + seconds, 0);
  let high = busiest(fewestPeople(tasks, work + walking, people)!);
  let low = (work / people) * (1 - CLOSE);
  while (high.cycleSeconds - low > CLOSE * high.cycleSeconds) {
    const middle = (low + high.cycleSeconds) / 2;
    const balance = fewestPeople(tasks, middle, people);
    const found = balance === null ? null : busiest(balance);
    // A load a rounding error above the cycle counts as within it, and would be found again and again.
    if (found === null || found.cycleSeconds >= high.cycleSeconds) low = middle;
    else high = found;
  }
  return high;
}

function busiest(balance: Balance): { cycleSeconds: number; balance: Balance } {
  return { cycleSeconds: Math.max(...balance.posts.map(({ loadSeconds }) => loadSeconds)), balance };
}
