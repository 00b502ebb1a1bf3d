import { MOMENTS, type Plan } from "../../asked/plan/index.ts";
import { type HeadWatcher, runDay } from "../../day/engine/index.ts";
import { compileLine, steps } from "../../day/line/index.ts";
import { measurer } from "../../day/observations/index.ts";
import type { Quantity } from "./quantity.ts";

const END = MOMENTS.indexOf("end");

/** How days are simulated. The same seed gives every plan the same random numbers, day by day. */
export interface Simulation {
  seed: string;
  quantities: readonly Quantity[];
  /** Stage at the end of whose work heads are counted. */
  countedAt: string;
  /** A day with more events fails. */
  mostEvents: number;
  /** Called before each day; gives way to signals and rejects when the work is to stop. */
  beforeDay: () => Promise<void>;
}

/** values[quantity][day] of `days` days of a plan, from the day `first` on; null where a response has no value on a day. */
export async function simulatedValues(
  plan: Plan,
  days: number,
  simulation: Simulation,
  first = 0,
): Promise<(number | null)[][]> {
  const { seed, quantities, countedAt, mostEvents, beforeDay } = simulation;
  const line = compileLine(plan);
  const stage = steps(plan).findIndex(({ name }) => name === countedAt);
  const valuesOf = measurer(
    plan,
    quantities.map((quantity) => (quantity.kind === "count" ? "" : quantity.info.key)),
  );
  const values: (number | null)[][] = quantities.map(() => []);
  for (let replication = first; replication < first + days; replication++) {
    await beforeDay();
    const counts = quantities.map(() => 0);
    const day = runDay(line, { seed, replication, mostEvents, watcher: counter(stage, quantities, counts) });
    const measured = valuesOf(day);
    quantities.forEach(({ kind }, i) => {
      values[i]!.push(kind === "count" ? counts[i]! : measured[i]!);
    });
  }
  return values;
}

function counter(stage: number, quantities: readonly Quantity[], counts: number[]): HeadWatcher {
  return {
    begin() {},
    end() {},
    pass(_, at, moment, now) {
      if (at !== stage || moment !== END) return;
      quantities.forEach((quantity, i) => {
        if (quantity.kind === "count" && now >= quantity.fromSeconds && now < quantity.toSeconds) counts[i]!++;
      });
    },
  };
}
