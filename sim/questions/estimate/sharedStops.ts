import { type Breakdown, carriedBy, type Plan, type SharedBreakdown } from "../../asked/plan/index.ts";
import { meanOf, timesAsLong } from "../../maths/random/index.ts";
import { does } from "../../text/kinds/index.ts";
import { headFlow } from "./headFlow.ts";
import { workList } from "./workList.ts";

/** A breakdown as the station sees it at which it is counted. */
type Seen = Pick<SharedBreakdown, "uptimeSeconds" | "repairSeconds">;

/**
 * Shared breakdowns by the stage of the main way at which each is counted: the slowest of those that it stops, which works
 * whenever the line does its best. All of them stand in the same repairs, so counting those at each would multiply them.
 */
export function sharedStops(plan: Plan): Map<string, Breakdown[]> {
  const counted = new Map<string, Breakdown[]>();
  if (plan.sharedBreakdowns.length === 0) return counted;
  const seconds = secondsPerHead(plan);
  const main = mainNames(plan);
  for (const shared of plan.sharedBreakdowns) {
    const names = shared.stops.filter((name) => main.has(name));
    const [slowest] = names.toSorted((a, b) => seconds.get(b)! - seconds.get(a)!);
    if (slowest === undefined) continue;
    counted.set(slowest, [...(counted.get(slowest) ?? []), asOwn(shared, seenAt(shared, slowest, seconds))]);
  }
  return counted;
}

/** By what a stage's time per head is longer for the shared breakdowns that stop it: 1 + repair / uptime for each. */
export function sharedFactor(plan: Plan, stage: string): number {
  if (plan.sharedBreakdowns.length === 0) return 1;
  const seconds = secondsPerHead(plan);
  const here = plan.sharedBreakdowns.filter(({ stops }) => stops.includes(stage));
  return here.reduce((sum, shared) => {
    const { uptimeSeconds, repairSeconds } = seenAt(shared, stage, seconds);
    return sum + meanOf(repairSeconds) / meanOf(uptimeSeconds);
  }, 1);
}

/**
 * In the time of a stage that always works. A clock that runs while any works, or always, then runs all the time; one that
 * runs only while all of them do runs for the product of the others' shares of it, as if they worked independently.
 */
function seenAt(shared: SharedBreakdown, stage: string, seconds: ReadonlyMap<string, number>): Seen {
  const { clock, stops, uptimeSeconds, repairSeconds } = shared;
  if (clock !== "all running") return { uptimeSeconds, repairSeconds };
  const here = seconds.get(stage) ?? 0;
  const longer = stops.reduce((product, name) => {
    const other = seconds.get(name) ?? 0;
    return other > 0 && other < here ? product * (here / other) : product;
  }, 1);
  return { uptimeSeconds: timesAsLong(uptimeSeconds, longer), repairSeconds };
}

function asOwn({ name, crew }: SharedBreakdown, seen: Seen): Breakdown {
  return { name, clock: "running", scope: "station", ...seen, crew, headInHand: "resume" };
}

/** Seconds per head hung in which each stage works at least, by name: crate steps, stations, chains. */
function secondsPerHead(plan: Plan): Map<string, number> {
  const { visits } = headFlow(plan);
  const chains = plan.line.flatMap((stage) =>
    does(stage, "carry stations")
      ? [[stage.name, stage.secondsPerShackle * (visits.get(stage.name) ?? 0)] as const]
      : [],
  );
  return new Map([
    ...workList(plan).map((item) => [item.name, item.secondsPerHead / item.positions] as const),
    ...chains,
  ]);
}

function mainNames({ line }: Plan): Set<string> {
  const main = line.filter(({ offLine }) => !offLine);
  return new Set(main.flatMap((stage) => [stage, ...carriedBy(stage)].map(({ name }) => name)));
}
