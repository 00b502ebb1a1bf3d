import type { Tasks } from "../../../../../sim/questions/size/balance/tasks.ts";

/** The fewest people by trying every order of the tasks and every way to cut it into posts; null where no way is allowed. */
export function bruteForce(tasks: Tasks, cycle: number): number | null {
  let best: number | null = null;
  for (const order of ordersOf(tasks)) {
    for (let cuts = 0; cuts < 1 << (order.length - 1); cuts++) {
      const people = peopleOf(order, cuts, tasks, cycle);
      if (people !== null && (best === null || people < best)) best = people;
    }
  }
  return best;
}

function peopleOf(order: readonly number[], cuts: number, tasks: Tasks, cycle: number): number | null {
  let people = 0;
  for (let from = 0; from < order.length; ) {
    let to = from + 1;
    while (to < order.length && !((cuts >> (to - 1)) & 1)) to++;
    const own = order.slice(from, to);
    const walked = own.length === 1 ? 0 : own.reduce((sum, task) => sum + tasks.walking[task]!, 0);
    const work = own.reduce((sum, task) => sum + tasks.seconds[task]!, walked);
    const needed = Math.max(1, Math.ceil(work / cycle - 1e-9));
    if (!tasks.pooled && needed > 1) return null;
    people += needed;
    from = to;
  }
  return people;
}

function ordersOf({ seconds, before }: Tasks): number[][] {
  const grow = (order: number[]): number[][] => {
    if (order.length === seconds.length) return [order];
    return seconds.flatMap((_, task) => {
      const ready = !order.includes(task) && before.every(([a, b]) => b !== task || order.includes(a));
      return ready ? grow([...order, task]) : [];
    });
  };
  return grow([]);
}
