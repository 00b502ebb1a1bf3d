import type { Plan } from "../../sim/asked/plan/index.ts";
import { responsesOf } from "../../sim/day/observations/index.ts";
import {
  type Observed,
  type PlanFigure,
  parametersOf,
  type Quantity,
  type Simulation,
  simulatedValues,
} from "../../sim/questions/calibrate/index.ts";
import { breakdown } from "./breakdowns.ts";
import { crew, dwell, exponential, manual, planOf, station, stream } from "./plans.ts";

const HOUR = 3600;

export const HOURS: readonly Quantity[] = [0, 1, 2].map((hour) => ({
  kind: "count",
  label: `hour ${hour}`,
  fromSeconds: hour * HOUR,
  toSeconds: (hour + 1) * HOUR,
}));

/** Heads every 6 s for three hours; two people at a bench that is the bottleneck, a machine that jams after it. */
export const CALIBRATED: Plan = planOf(
  stream(exponential(6), 1800, "wait"),
  [
    manual("bench", { family: "lognormal", mean: 13, cv: 0.3 }, "bench", {
      positions: 3,
      buffer: Number.POSITIVE_INFINITY,
    }),
    station(
      "machine",
      { family: "lognormal", mean: 4, cv: 0.1 },
      {
        buffer: 20,
        breakdowns: [breakdown(0, 0, { uptimeSeconds: exponential(1200), repairSeconds: exponential(40) })],
      },
    ),
    dwell("cold room", 60, 10_000),
  ],
  { crews: [crew("bench", 2)] },
);

/** Heads by the hour and the end of work. */
export function quantitiesOf(plan: Plan): Quantity[] {
  const finish = responsesOf(plan).find(({ key }) => key === "finish")!;
  return [...HOURS, { kind: "response", label: finish.label, info: finish }];
}

export function simulationOf(seed: string, quantities: readonly Quantity[] = quantitiesOf(CALIBRATED)): Simulation {
  return { seed, quantities, countedAt: "machine", mostEvents: 1e7, beforeDay: async () => {} };
}

/** Days of a plan, as if somebody had written them down. */
export async function observedOf(plan: Plan, days: number, seed = "the real line"): Promise<Observed> {
  const quantities = quantitiesOf(plan);
  const values = await simulatedValues(plan, days, simulationOf(seed, quantities));
  const list = quantities.map((quantity, i) => ({ heading: quantity.label, quantity, values: values[i]! }));
  return { lines: Array.from({ length: days }, (_, day) => day + 2), quantities: list, passedOver: [] };
}

export function parameterAt(path: string): PlanFigure {
  return parametersOf(CALIBRATED).find((each) => each.path === path)!;
}
