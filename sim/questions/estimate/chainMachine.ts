import type { Breakdown, Chain, ChainStation } from "../../asked/plan/index.ts";
import type { SerialStation } from "./decompose.ts";
import type { Chance } from "./pairServer.ts";
import { joinStops, stopOf } from "./stops.ts";
import { meanCycleSeconds, workOf } from "./workOf.ts";

type Reduced = SerialStation & { name: string };

/**
 * A chain as a machine that takes a head every step and stands for every breakdown on it, followed by those of its
 * stations that stop it and have fewer positions than their window has shackles: each with the rest of the window as
 * places. Where every shackle of the window has a position, nobody waits for one. `shared`: breakdowns of more than the chain.
 */
export function chainMachine(
  chain: Chain,
  visits: number,
  weightKg: number,
  shared: readonly Breakdown[] = [],
): Reduced[] {
  const own = chain.stations.flatMap((station) => standstills(station, visits, weightKg));
  const stops = joinStops([...own, ...shared.map((each) => stopOf(each, chain.secondsPerShackle * visits))]);
  const work = { seconds: chain.secondsPerShackle * visits, squaredCv: 0, stops };
  const machine: Reduced = { name: chain.name, positions: 1, places: 0, work };
  const slower = chain.stations.filter(
    ({ ifUnfinished, positions, window }) => ifUnfinished === "stop" && positions < window,
  );
  return [machine, ...slower.map((station) => windowStation(station, visits, weightKg))];
}

/** The chain stands whichever position is down. */
function standstills(station: ChainStation, visits: number, weightKg: number): Chance[] {
  const busy = meanCycleSeconds(station, weightKg) * visits;
  return station.breakdowns.map((breakdown) =>
    stopOf(breakdown, breakdown.scope === "station" ? busy / station.positions : busy),
  );
}

/** Its breakdowns are the chain's already. */
function windowStation(station: ChainStation, visits: number, weightKg: number): Reduced {
  const { name, positions, window } = station;
  return {
    name,
    positions,
    places: window - positions,
    work: workOf({ ...station, breakdowns: [] }, visits, weightKg),
  };
}
