import type { Chain, ChainStation, CrateStep, Plan, Station } from "./plan.ts";

/** A place where work is done; the three kinds have breakdowns and a time. */
export type Work = Station | ChainStation | CrateStep;

/** A copy of the plan with every place of work as `of` gives it back; `path` as studies write it. */
export function mapWork(plan: Plan, of: <Kind extends Work>(work: Kind, path: string[], name: string) => Kind): Plan {
  const onChain = (chain: Chain): Chain => ({
    ...chain,
    stations: chain.stations.map((station) =>
      of(station, ["line", chain.name, "stations", station.name], station.name),
    ),
  });
  const line = plan.line.map((stage) => {
    if (stage.kind === "station") return of(stage, ["line", stage.name], stage.name);
    return stage.kind === "chain" ? onChain(stage) : stage;
  });
  const handling = plan.liveHandling;
  if (handling === null) return { ...plan, line };
  const crates = (list: CrateStep[]) => list.map((step) => of(step, ["liveHandling", step.name], step.name));
  return {
    ...plan,
    line,
    liveHandling: { ...handling, toHanging: crates(handling.toHanging), back: crates(handling.back) },
  };
}
