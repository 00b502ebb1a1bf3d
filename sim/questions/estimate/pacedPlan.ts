import { type Pace, type Plan, pacedIn, type Stage } from "../../asked/plan/index.ts";
import { meanOf, timesAsLong, type Varying } from "../../maths/random/index.ts";
import { byKind } from "../../text/kinds/index.ts";

/** Hours at which the speed of something in the plan changes, ascending, seconds after the day's start. */
export function paceHours({ line }: Plan): number[] {
  const hours = line.flatMap((stage) =>
    pacedIn(stage).flatMap(({ pace }) => pace.map(({ fromSeconds }) => fromSeconds)),
  );
  return [...new Set(hours)].sort((a, b) => a - b);
}

/**
 * The plan as it works at that second, all day. An upper rate counts for the mean: times that vary around one that is as
 * long as the rate lets it are longer on the average, so the estimate is on the high side there.
 */
export function pacedPlan(plan: Plan, seconds: number): Plan {
  return { ...plan, line: plan.line.map((stage) => pacedStage(stage, seconds)) };
}

function pacedStage(stage: Stage, seconds: number): Stage {
  return byKind<Stage, Stage>(stage, {
    station: (own) => pacedStation(own, seconds),
    dwell: (own) => own,
    chain: (own) => ({
      ...own,
      secondsPerShackle: paced(own.pace, seconds, own.secondsPerShackle, 1),
      stations: own.stations.map((station) => pacedStation(station, seconds)),
    }),
  });
}

function pacedStation<Of extends { pace: Pace[]; cycleSeconds: Varying; positions: number }>(
  of: Of,
  seconds: number,
): Of {
  const mean = meanOf(of.cycleSeconds);
  const longer = paced(of.pace, seconds, mean, of.positions) / mean;
  return longer === 1 ? of : { ...of, cycleSeconds: timesAsLong(of.cycleSeconds, longer) };
}

function paced(paces: readonly Pace[], seconds: number, asWritten: number, positions: number): number {
  const now = paces.findLast(({ fromSeconds }) => fromSeconds <= seconds);
  if (now === undefined) return asWritten;
  return Math.max(now.mostPerSecond === null ? 0 : positions / now.mostPerSecond, asWritten / now.speed);
}
