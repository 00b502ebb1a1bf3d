import type { Breakdown } from "../../asked/plan/index.ts";
import { meanOf, squaredCvOf, type Varying } from "../../maths/random/index.ts";
import type { HeadWork } from "./pairServer.ts";
import { joinStops, stopOf } from "./stops.ts";

/** What a station and a station on a chain have in common. */
export interface Worked {
  cycleSeconds: Varying;
  weightFactor: { perKg: number; atKg: number } | null;
  positions: number;
  breakdowns: readonly Breakdown[];
}

/** Shortest cycle as a share of the usual one, however light the head: as the plan has it. */
const MIN_FACTOR = 0.1;

/** Mean cycle of one position for heads of this weight, seconds. */
export function meanCycleSeconds({ cycleSeconds, weightFactor }: Worked, weightKg: number): number {
  const factor = weightFactor === null ? 1 : 1 + weightFactor.perKg * (weightKg - weightFactor.atKg);
  return meanOf(cycleSeconds) * Math.max(MIN_FACTOR, factor);
}

/**
 * The work per head hung at a station that each of them comes to `visits` times on the average. A stop of one of several
 * positions counts as a shorter stop of all of them that loses as many position-seconds.
 */
export function workOf(station: Worked, visits: number, weightKg: number): HeadWork {
  const { positions, breakdowns } = station;
  const seconds = (meanCycleSeconds(station, weightKg) * visits) / positions;
  const stops = breakdowns.map((breakdown) => {
    const { chance, seconds: length } = stopOf(
      breakdown,
      breakdown.scope === "station" ? seconds : seconds * positions,
    );
    return { chance, seconds: breakdown.scope === "station" ? length : length / positions };
  });
  return { seconds, squaredCv: squaredCvOf(station.cycleSeconds), stops: joinStops(stops) };
}
