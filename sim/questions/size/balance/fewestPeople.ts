import { rankedWeights } from "./rankedWeights.ts";
import { type Balance, peopleFor, postOf, ROUNDING, type Tasks } from "./tasks.ts";

/** Tasks that have a bit each in a whole number. */
const MAX_TASKS = 30;
/** Sets of tasks looked at before the heuristic has to do: about a second and 200 MB. */
const MAX_SETS = 500_000;

/** The best way to give out a set of tasks that holds all predecessors of each of its own. */
interface Given {
  people: number;
  /** Of the post begun last: its work, each task with its way, as if it had more than one. */
  seconds: number;
  /** Of that post. */
  tasks: number;
  /** Left of that post's people in a cycle. */
  slack: number;
  task: number;
  opens: boolean;
  from: Given | null;
}

/**
 * The fewest people who do all tasks, none of them busy for longer than `cycle` seconds a head (assembly line balancing, type 1).
 * Dynamic programming over the sets of tasks that can be done first (Held, Karp and Shareshian 1963, Operations Research 11): of all ways to give out a
 * set, one with fewer people, then with more time left at the post begun last, is never worse. A pooled post gets one person more
 * when a task asks for it. Null where one person is to do a task longer than the cycle, or where it takes more than `most` people.
 */
export function fewestPeople(tasks: Tasks, cycle: number, most = Number.POSITIVE_INFINITY): Balance | null {
  if (!tasks.pooled && tasks.seconds.some((seconds) => seconds > cycle * (1 + ROUNDING))) return null;
  const last = tasks.seconds.length > MAX_TASKS ? undefined : search(tasks, cycle, most);
  if (last === null) return null;
  if (last !== undefined) return balanceOf(last, tasks, cycle);
  const found = rankedWeights(tasks, cycle);
  return found.people > most ? null : found;
}

/** Undefined where there are too many sets; null where it takes more than `most` people. */
function search(tasks: Tasks, cycle: number, most: number): Given | null | undefined {
  const predecessors = tasks.seconds.map((_, task) => bits(task, tasks.before));
  const all = tasks.seconds.reduce((sum, seconds) => sum + seconds, 0);
  const nothing: Given = { people: 0, seconds: 0, tasks: 0, slack: 0, task: -1, opens: false, from: null };
  let layer = new Map<number, { given: Given; left: number }>([[0, { given: nothing, left: all }]]);
  let sets = 0;
  for (let size = 0; size < tasks.seconds.length; size++) {
    const next: typeof layer = new Map();
    for (const [set, { given, left }] of layer) {
      for (let task = 0; task < predecessors.length; task++) {
        if ((set >>> task) & 1 || (set & predecessors[task]!) !== predecessors[task]) continue;
        const better = extended(given, task, tasks, cycle);
        const after = left - tasks.seconds[task]!;
        if (better.people + peopleAtLeast(after - Math.max(0, better.slack), cycle) > most) continue;
        const key = set | (1 << task);
        const known = next.get(key);
        if (known === undefined || isBetter(better, known.given)) next.set(key, { given: better, left: after });
      }
    }
    sets += next.size;
    if (sets > MAX_SETS) return undefined;
    layer = next;
  }
  return [...layer.values()][0]?.given ?? null;
}

/** One task more: at the post begun last where that takes fewer people, else at a post of its own. */
function extended(given: Given, task: number, tasks: Tasks, cycle: number): Given {
  const own = tasks.seconds[task]!;
  const withWay = own + tasks.walking[task]!;
  const alone = peopleFor(own, cycle);
  const opened: Given = {
    people: given.people + alone,
    seconds: withWay,
    tasks: 1,
    slack: alone * cycle - withWay,
    task,
    opens: true,
    from: given,
  };
  if (given.tasks === 0) return opened;
  const seconds = given.seconds + withWay;
  const now = given.tasks === 1 ? peopleFor(tasks.seconds[given.task]!, cycle) : peopleFor(given.seconds, cycle);
  const then = peopleFor(seconds, cycle);
  if (then > now && !tasks.pooled) return opened;
  const joined: Given = {
    people: given.people + then - now,
    seconds,
    tasks: given.tasks + 1,
    slack: then * cycle - seconds,
    task,
    opens: false,
    from: given,
  };
  return isBetter(opened, joined) ? opened : joined;
}

function isBetter(a: Given, b: Given): boolean {
  return a.people < b.people || (a.people === b.people && a.slack > b.slack + ROUNDING);
}

function peopleAtLeast(seconds: number, cycle: number): number {
  return Math.max(0, Math.ceil(seconds / cycle - ROUNDING));
}

function bits(task: number, before: Tasks["before"]): number {
  return before.reduce((set, [first, second]) => (second === task ? set | (1 << first) : set), 0);
}

function balanceOf(last: Given, tasks: Tasks, cycle: number): Balance {
  const posts: number[][] = [[]];
  for (let given: Given | null = last; given !== null && given.task >= 0; given = given.from) {
    posts[0]!.unshift(given.task);
    if (given.opens && given.from!.task >= 0) posts.unshift([]);
  }
  const made = posts.map((own) => postOf(own, tasks, cycle));
  return { posts: made, people: made.reduce((sum, { people }) => sum + people, 0), exact: true };
}
