import type { Plan } from "../../sim/asked/plan/index.ts";
import type { DayOptions, DayRecord } from "../../sim/day/engine/index.ts";

/** Days `from` up to but not including `to` of one plan. */
export interface Replications {
  plan: Plan;
  options: Omit<DayOptions, "replication">;
  from: number;
  to: number;
}

// Awaited, so that the sources are loaded as the modules they are: see sim/days/run/threads/studyThread.ts.
const { runDay } = await import("../../sim/day/engine/index.ts");
const { compileLine } = await import("../../sim/day/line/index.ts");

/** The program of a worker thread. Histograms stay behind: they are much to send and no check looks at them. */
export default function simulate({ plan, options, from, to }: Replications): DayRecord[] {
  const line = compileLine(plan);
  return Array.from({ length: to - from }, (_, index) => {
    const day = runDay(line, { ...options, replication: from + index });
    for (const tally of [day.timeInSystem, ...day.limits.map((limit) => limit.tally)]) tally.bins = [];
    return day;
  });
}
