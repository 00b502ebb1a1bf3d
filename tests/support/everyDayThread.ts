import type { DaySource } from "../../sim/days/run/index.ts";

/** The first days of each plan of a source. */
export interface EveryDay {
  source: DaySource;
  days: number;
}

// Awaited, so that the sources are loaded as the modules they are: see sim/days/run/threads/studyThread.ts.
const { DaySimulator } = await import("../../sim/days/run/index.ts");

/** The program of a worker thread: of each plan, of each day, the values of the source's keys. */
export default function simulate({ source, days }: EveryDay): (number | null)[][][] {
  const simulator = new DaySimulator(source);
  return source.plans.map((_, variant) => {
    const found = simulator.simulateBatch({ variant, first: 0, count: days });
    if (found.failed.length > 0) throw new Error(found.failed[0]!.message);
    return found.days.map(({ values }) => values);
  });
}
