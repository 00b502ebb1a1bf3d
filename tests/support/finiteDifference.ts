import { runDay } from "../../sim/engine/index.ts";
import { compileLine, type Step, steps, workplace } from "../../sim/line/index.ts";
import { boundTotal, type Slope, slopeIn } from "../../sim/observations/index.ts";
import type { Plan } from "../../sim/plan/index.ts";
import { timesAsLong, type Varying } from "../../sim/random/index.ts";

/** The plan with one mean multiplied by `factor`, the shape of its distribution kept. */
export function scaled(plan: Plan, { parameter, stage, detail }: Slope, factor: number): Plan {
  const copy = structuredClone(plan);
  const { supply } = copy;
  if (parameter === "arrival") {
    if (supply.kind !== "stream") throw new Error("scaled: only the gaps of a stream have a mean");
    supply.interarrival = timesAsLong(supply.interarrival, factor);
    return copy;
  }
  const step = steps(copy).find(({ name }) => name === stage)!;
  if (parameter === "uptime" || parameter === "repair time") {
    const failure = workplace(step).breakdowns.find(({ name }) => name === detail)!;
    const key = parameter === "uptime" ? "uptimeSeconds" : "repairSeconds";
    failure[key] = timesAsLong(failure[key], factor);
  } else scaleOwn(step, parameter === "travel time", (time) => timesAsLong(time, factor));
  return copy;
}

function scaleOwn(step: Step, isTravel: boolean, scale: (time: Varying) => Varying): void {
  if (step.kind === "crates") step.of.secondsPerCycle = scale(step.of.secondsPerCycle);
  else if (step.kind === "chain station") step.of.cycleSeconds = scale(step.of.cycleSeconds);
  else if (isTravel) step.of.travelSeconds = scale(step.of.travelSeconds!);
  else if (step.kind === "station") step.of.cycleSeconds = scale(step.of.cycleSeconds);
  else if (step.kind === "dwell" && step.of.dwell.kind === "drawn") {
    step.of.dwell.seconds = scale(step.of.dwell.seconds);
  }
}

/** The plan with one load that arrives so many seconds later. */
function withLoadLater(plan: Plan, name: string, seconds: number): Plan {
  const copy = structuredClone(plan);
  if (copy.supply.kind !== "loads") throw new Error("withLoadLater: the plan has no loads");
  const load = copy.supply.loads.find((each) => each.name === name)!;
  load.atSeconds += seconds;
  return copy;
}

/** One replication: the slope from one run, and the central difference of two more on the same random numbers. */
export interface SlopePair {
  slope: number;
  difference: number;
}

/**
 * A pair for each replication; null when a day does not end by itself. `step`: a share of the mean; of a load's arrival,
 * which moves as a whole, so many times twenty seconds.
 */
export function pairsOf(
  plan: Plan,
  slope: Slope,
  seed: string,
  replications: number,
  step: number,
): SlopePair[] | null {
  const { meanSeconds, detail } = slope;
  const half = meanSeconds > 0 ? step * meanSeconds : 20 * step;
  const moved = (by: number) =>
    meanSeconds > 0 ? scaled(plan, slope, 1 + by * step) : withLoadLater(plan, detail, by * half);
  const [base, more, less] = [plan, moved(1), moved(-1)].map(compileLine) as [Line, Line, Line];
  const pairs: SlopePair[] = [];
  for (let replication = 0; replication < replications; replication++) {
    const day = runDay(base, { seed, replication, binding: true });
    const ends = [more, less].map((line) => runDay(line, { seed, replication, binding: true }));
    if ([day, ...ends].some(({ status }) => status !== "finished")) return null;
    const [later, earlier] = ends.map(boundTotal) as [number, number];
    pairs.push({ slope: slopeIn(day, slope)!, difference: (later - earlier) / (2 * half) });
  }
  return pairs;
}

type Line = ReturnType<typeof compileLine>;

/** The same, for a plan whose days end. */
export function slopeAndDifference(
  plan: Plan,
  slope: Slope,
  seed: string,
  replications: number,
  step: number,
): SlopePair[] {
  const pairs = pairsOf(plan, slope, seed, replications, step);
  if (pairs === null) throw new Error(`${seed}: a day did not end by itself`);
  return pairs;
}

