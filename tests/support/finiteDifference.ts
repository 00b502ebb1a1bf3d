import type { Plan } from "../../sim/asked/plan/index.ts";
import { runDay } from "../../sim/day/engine/index.ts";
import { compileLine, type Step, steps, workplace } from "../../sim/day/line/index.ts";
import { type Slope, slopeIn } from "../../sim/day/observations/index.ts";
import { timesAsLong, type Varying } from "../../sim/maths/random/index.ts";

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

type Line = ReturnType<typeof compileLine>;

/** The plan with a time a little longer and a little shorter, and what lies between them, seconds. */
interface Moved {
  more: Line;
  less: Line;
  seconds: number;
}

/** `step`: a share of the mean; of a load's arrival, which moves as a whole, so many times twenty seconds. */
function movedBy(plan: Plan, slope: Slope, step: number): Moved {
  const { meanSeconds, detail } = slope;
  const half = meanSeconds > 0 ? step * meanSeconds : 20 * step;
  const line = (by: number) =>
    compileLine(meanSeconds > 0 ? scaled(plan, slope, 1 + by * step) : withLoadLater(plan, detail, by * half));
  return { more: line(1), less: line(-1), seconds: 2 * half };
}

/** For each slope a pair for each replication; null when a day does not end by itself. `step` as in `movedBy`. */
export function pairsOf(
  plan: Plan,
  slopes: readonly Slope[],
  seed: string,
  replications: number,
  step: number,
): SlopePair[][] | null {
  const base = compileLine(plan);
  const moved = slopes.map((slope) => movedBy(plan, slope, step));
  const pairs: SlopePair[][] = slopes.map(() => []);
  for (let replication = 0; replication < replications; replication++) {
    const day = runDay(base, { seed, replication, binding: true });
    if (day.status !== "finished") return null;
    const whole = day.binding!.work === null;
    for (const [row, slope] of slopes.entries()) {
      const { more, less, seconds } = moved[row]!;
      const ends = [more, less].map((line) => runDay(line, { seed, replication }));
      if (ends.some(({ status }) => status !== "finished")) return null;
      const [later, earlier] = ends.map((end) => (whole ? end.finishSeconds : end.workFinishSeconds)) as [
        number,
        number,
      ];
      pairs[row]!.push({ slope: slopeIn(day, slope)!, difference: (later - earlier) / seconds });
    }
  }
  return pairs;
}

/** The same of one slope, for a plan whose days end. */
export function slopeAndDifference(
  plan: Plan,
  slope: Slope,
  seed: string,
  replications: number,
  step: number,
): SlopePair[] {
  const pairs = pairsOf(plan, [slope], seed, replications, step);
  if (pairs === null) throw new Error(`${seed}: a day did not end by itself`);
  return pairs[0]!;
}
