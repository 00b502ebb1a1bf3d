import type { Breakdown, Plan, Station } from "../../sim/asked/plan/index.ts";
import type { ChainLine, ChainStation } from "../oracle/markovChain.ts";
import { exponential, planOf, saturated, station, stream } from "./plans.ts";

/** The engine's plan of a line that the Markov chain solves exactly; stations are named s0, s1, ... */
export function chainPlan(line: ChainLine, heads: number): Plan {
  const supply =
    line.arrivals === undefined ? saturated(heads) : stream(exponential(1 / line.arrivals), heads, "turn away");
  return planOf(supply, line.stations.map(chainStation));
}

function chainStation(parts: ChainStation, index: number): Station {
  return station(`s${index}`, exponential(1 / parts.rate), {
    positions: parts.servers ?? 1,
    buffer: parts.places ?? 0,
    breakdowns: parts.failure ? [failures(parts.failure, parts.repair!)] : [],
  });
}

/** Exponential failures and repairs of single positions, by rate. */
export function failures(rate: number, repair: number, clock: Breakdown["clock"] = "running"): Breakdown {
  return {
    name: "failure",
    clock,
    scope: "position",
    uptimeSeconds: exponential(1 / rate),
    repairSeconds: exponential(1 / repair),
    crew: null,
    headInHand: "resume",
  };
}
