import type { Plan } from "../../sim/asked/plan/index.ts";
import { PLAIN_PROCEDURE } from "../../sim/asked/study/index.ts";
import { MAX_EVENTS } from "../../sim/days/run/index.ts";
import type { EveryDay } from "./everyDayThread.ts";
import { stayingThreads } from "./stayingThreads.ts";

/** Plans handed to a thread at once. */
const PART = 20;

/**
 * Many plans simulated for some days each, in worker threads that stay for the whole file, where the simulator runs several
 * times as fast as among the tests: values of the keys, by plan and day.
 */
export function everyDay(): (plans: readonly Plan[], keys: string[], days: number) => Promise<(number | null)[][][]> {
  const pool = stayingThreads<EveryDay, (number | null)[][][]>("everyDayThread");
  return async (plans, keys, days) => {
    const common = { keys, procedure: PLAIN_PROCEDURE, traces: "none", check: false, mostEvents: MAX_EVENTS } as const;
    const parts = Array.from({ length: Math.ceil(plans.length / PART) }, (_, part) =>
      plans.slice(part * PART, (part + 1) * PART),
    );
    const found = parts.map((part) => pool.run({ source: { ...common, seed: "every day", plans: part }, days }));
    return (await Promise.all(found)).flat();
  };
}
