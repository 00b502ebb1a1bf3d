import { byKind, does } from "../../text/kinds/index.ts";
import type { Chain, ChainStation, CrateStep, Pace, Plan, Stage, Station } from "./plan.ts";

/** A place where work is done; the three kinds have breakdowns and a time. */
export type Work = Station | ChainStation | CrateStep;

/** The stations on a stage that carries some. */
export function carriedBy(stage: Stage): ChainStation[] {
  return does(stage, "carry stations") ? stage.stations : [];
}

/** A stage's stations: itself or those on it; none where no work is done. */
export function stationsIn(stage: Stage): (Station | ChainStation)[] {
  return does(stage, "work") ? [stage] : carriedBy(stage);
}

/** What has a speed by the hour there. */
export function pacedIn(stage: Stage): { name: string; pace: Pace[] }[] {
  return byKind<Stage, { name: string; pace: Pace[] }[]>(stage, {
    station: (own) => [own],
    dwell: () => [],
    chain: (own) => [own, ...own.stations],
  });
}

/** A copy of the plan with every place of work as `of` gives it back; `path` as studies write it. */
export function mapWork(plan: Plan, of: <Kind extends Work>(work: Kind, path: string[], name: string) => Kind): Plan {
  const onChain = (chain: Chain): Chain => ({
    ...chain,
    stations: chain.stations.map((station) =>
      of(station, ["line", chain.name, "stations", station.name], station.name),
    ),
  });
  const line = plan.line.map((stage) =>
    byKind<Stage, Stage>(stage, {
      station: (own) => of<Station>(own, ["line", own.name], own.name),
      dwell: (own) => own,
      chain: onChain,
    }),
  );
  const handling = plan.liveHandling;
  if (handling === null) return { ...plan, line };
  const crates = (list: CrateStep[]) => list.map((step) => of(step, ["liveHandling", step.name], step.name));
  return {
    ...plan,
    line,
    liveHandling: { ...handling, toHanging: crates(handling.toHanging), back: crates(handling.back) },
  };
}
