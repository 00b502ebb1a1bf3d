import { type Balance, type Post, postOf, type Tasks } from "./tasks.ts";

/** The work of each task and of all that come after it (Helgeson and Birnie 1961). */
export function positionalWeights({ seconds, before }: Tasks): number[] {
  const after = seconds.map((_, task) => followers(task, before));
  return seconds.map((own, task) => [...after[task]!].reduce((sum, other) => sum + seconds[other]!, own));
}

/**
 * Ranked positional weight (Helgeson and Birnie 1961, The Journal of Industrial Engineering 12): post by post, the task of the greatest weight
 * whose predecessors are given out and that fits. Ties go to the lower number. It may take more people than are needed.
 */
export function rankedWeights(tasks: Tasks, cycle: number): Balance {
  const weights = positionalWeights(tasks);
  const ranked = tasks.seconds.map((_, task) => task).toSorted((a, b) => weights[b]! - weights[a]! || a - b);
  const posts: Post[] = [];
  const given = new Set<number>();
  while (given.size < ranked.length) {
    let post: Post | null = null;
    for (;;) {
      const now = post;
      const next = ranked.find((task) => isReady(task, given, tasks) && fits(now, task, tasks, cycle));
      if (next === undefined) break;
      given.add(next);
      post = postOf([...(post?.tasks ?? []), next], tasks, cycle);
    }
    posts.push(post!);
  }
  return { posts, people: posts.reduce((sum, { people }) => sum + people, 0), exact: false };
}

/** A post takes what does not ask for one person more. */
function fits(post: Post | null, task: number, tasks: Tasks, cycle: number): boolean {
  return post === null || postOf([...post.tasks, task], tasks, cycle).people === post.people;
}

function isReady(task: number, given: ReadonlySet<number>, { before }: Tasks): boolean {
  return !given.has(task) && before.every(([first, second]) => second !== task || given.has(first));
}

function followers(task: number, before: Tasks["before"]): Set<number> {
  const found = new Set<number>();
  const open = [task];
  for (let from = open.pop(); from !== undefined; from = open.pop()) {
    for (const [first, second] of before) {
      if (first !== from || found.has(second)) continue;
      found.add(second);
      open.push(second);
    }
  }
  return found;
}
