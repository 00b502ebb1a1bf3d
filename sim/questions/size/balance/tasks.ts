/** Work to be shared out among posts. Index of a task: its place in `seconds`. */
export interface Tasks {
  /** Work on a head, above 0. */
  seconds: readonly number[];
  /** Pairs [a, b]: b comes after a on the line. */
  before: readonly (readonly [number, number])[];
  /** By task: added where its post has more than one, the way to it for each head. 0 where nobody walks. */
  walking: readonly number[];
  /** True: a post may have several people, who share its tasks. False: one person each (the classic problem). */
  pooled: boolean;
}

/** Tasks that belong together, and the people who do them. */
export interface Post {
  /** In the order in which they were given to it. */
  tasks: number[];
  people: number;
  /** Of one person and one head, walking included. */
  loadSeconds: number;
}

export interface Balance {
  posts: Post[];
  people: number;
  /** False where a heuristic had to do: fewer people may be enough. */
  exact: boolean;
}

/** Keeps a load of just the cycle from asking for another person. */
export const ROUNDING = 1e-9;

/** People that it takes to do so much work in a cycle. */
export function peopleFor(seconds: number, cycle: number): number {
  return Math.max(1, Math.ceil(seconds / cycle - ROUNDING));
}

/** A post of these tasks at this cycle. */
export function postOf(tasks: readonly number[], { seconds, walking }: Tasks, cycle: number): Post {
  const walks = tasks.length > 1 ? 1 : 0;
  const work = tasks.reduce((sum, task) => sum + seconds[task]! + walks * walking[task]!, 0);
  const people = peopleFor(work, cycle);
  return { tasks: [...tasks], people, loadSeconds: work / people };
}
