import { runDay } from "../../sim/engine/index.ts";
import { compileLine } from "../../sim/line/index.ts";
import { boundTotal, type Slope, slopeIn } from "../../sim/observations/index.ts";
import type { Plan } from "../../sim/plan/index.ts";
import { timesAsLong } from "../../sim/random/index.ts";

/** The plan with one mean multiplied by `factor`, the shape of its distribution kept. */
export function scaled(plan: Plan, { parameter, stage, detail }: Slope, factor: number): Plan {
  const copy = structuredClone(plan);
  const { supply } = copy;
  if (parameter === "arrival") {
    if (supply.kind !== "stream") throw new Error("scaled: only the gaps of a stream have a mean");
    supply.interarrival = timesAsLong(supply.interarrival, factor);
    return copy;
  }
  const found = copy.line.find(({ name }) => name === stage)!;
  if (parameter === "travel time") found.travelSeconds = timesAsLong(found.travelSeconds!, factor);
  else if (found.kind === "dwell" && found.dwell.kind === "drawn") {
    found.dwell.seconds = timesAsLong(found.dwell.seconds, factor);
  } else if (found.kind === "station" && parameter === "cycle time") {
    found.cycleSeconds = timesAsLong(found.cycleSeconds, factor);
  } else if (found.kind === "station") {
    const failure = found.breakdowns.find(({ name }) => name === detail)!;
    const key = parameter === "uptime" ? "uptimeSeconds" : "repairSeconds";
    failure[key] = timesAsLong(failure[key], factor);
  }
  return copy;
}

/** Per replication: the slope from one run, and the central difference of two more on the same random numbers. */
export function slopeAndDifference(
  plan: Plan,
  slope: Slope,
  seed: string,
  replications: number,
  step: number,
): { slope: number; difference: number }[] {
  const lines = [plan, scaled(plan, slope, 1 + step), scaled(plan, slope, 1 - step)].map(compileLine);
  const [base, more, less] = lines as [(typeof lines)[0], (typeof lines)[0], (typeof lines)[0]];
  return Array.from({ length: replications }, (_, replication) => {
    const options = { seed, replication, binding: true };
    const day = runDay(base, options);
    const end = (line: typeof base) => boundTotal(runDay(line, options));
    const difference = (end(more) - end(less)) / (2 * step * slope.meanSeconds);
    return { slope: slopeIn(day, slope)!, difference };
  });
}
