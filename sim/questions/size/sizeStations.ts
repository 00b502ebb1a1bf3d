import { meanOf } from "../../maths/random/index.ts";
import type { Demand, DemandStep } from "./demand.ts";
import type { SizedStation } from "./design.ts";
import { maintenanceShare, repairShare } from "./repairs.ts";
import { stepSeconds } from "./stepSeconds.ts";
import { stepShares } from "./stepShares.ts";
import type { Zone } from "./zones.ts";

/** What was added by hand or by the estimate, by step. */
export interface Extra {
  positions: ReadonlyMap<string, number>;
  places: ReadonlyMap<string, number>;
  /** Where posts are pooled. */
  people: ReadonlyMap<Zone, number>;
}

export const NOTHING_EXTRA: Extra = { positions: new Map(), places: new Map(), people: new Map() };

/** Positions, people and places of every step that works, at this rate of heads hung. As many stick as stun. */
export function sizeStations(demand: Demand, headsPerSecond: number, extra: Extra): SizedStation[] {
  const shares = stepShares(demand);
  const working = demand.steps.filter(({ work }) => work === "manual" || work === "machine");
  const stations = working.map((step, index) => {
    const share = shares.get(step.name)!;
    return sized(step, headsPerSecond, demand, { share, extra, follows: index > 0 });
  });
  const stunning = stations.find(({ name }) => name === "stunning")?.positions ?? 0;
  return stations.map((station) => {
    if (station.name !== NONE_BEFORE || station.positions >= stunning) return station;
    const more = stunning / station.positions;
    const headsPerSecondAtMost = station.headsPerSecondAtMost * more;
    return { ...station, positions: stunning, headsPerSecondAtMost, load: station.load / more };
  });
}

function sized(
  step: DemandStep,
  headsPerSecond: number,
  demand: Demand,
  { share, extra, follows }: { share: number; extra: Extra; follows: boolean },
): SizedStation {
  const { name, section, offLine, figures } = step;
  const rate = headsPerSecond * share;
  const work = step.work === "machine" ? "machine" : "manual";
  const cycleSeconds = stepSeconds(step);
  const covers = follows && !offLine && figures.places === undefined ? coveredBefore(step, demand) : null;
  const sizedPlaces = follows ? placesFor(covers, rate) + (extra.places.get(name) ?? 0) : 0;
  const places = offLine ? null : (figures.places ?? sizedPlaces);
  // Without places a head that travels here holds a position already.
  const held = follows && places === 0 ? travelTo(step, demand) : 0;
  const busy = rate * (cycleSeconds * (1 + repairShare(figures.breakdowns)) + held);
  const most = work === "machine" ? demand.line.machineLoad : demand.line.handLoad;
  const positions =
    figures.positions ?? Math.max(1, Math.ceil(busy / most - ROUNDING)) + (extra.positions.get(name) ?? 0);
  const hands =
    work === "manual"
      ? { crew: crewOf(step, demand), peoplePerPosition: figures.people ?? 1 }
      : { crew: null, peoplePerPosition: 0 };
  return {
    ...{ name, section, work, cycleSeconds, cratesAtOnce: null, positions, ...hands },
    headsPerSecondAtMost: (positions * headsPerSecond) / busy,
    visitsPerHead: share,
    ...{ repairShare: repairShare(figures.breakdowns), heldSeconds: held, covers },
    personSecondsPerHead: cycleSeconds * share * hands.peoplePerPosition,
    repairLoad: rate * cycleSeconds * maintenanceShare(figures.breakdowns),
    ...{ load: busy / positions, places },
  };
}

/** Keeps a load of just the most allowed from asking for one more position. */
const ROUNDING = 1e-9;

/** The few heads that are sent to trim are trimmed by those who trim the others. */
function crewOf({ name, offLine }: DemandStep, { steps }: Demand): string {
  return offLine && steps.some((step) => step.name === FINAL_TRIM) ? FINAL_TRIM : name;
}

const FINAL_TRIM = "final trim";

/** Between stunning and sticking nobody may wait. */
const NONE_BEFORE = "sticking";
const STUNNED = "stunning";

/** Heads that come while the station pauses for the time to be covered, or its usual stop lasts, and on the way to it. */
function placesFor(covers: SizedStation["covers"], rate: number): number {
  return covers === null ? 0 : Math.ceil(rate * (covers.coverSeconds + covers.travelSeconds));
}

/** Null where there are to be no places. */
function coveredBefore(step: DemandStep, demand: Demand): SizedStation["covers"] {
  if (step.name === NONE_BEFORE && before(step, demand)?.name === STUNNED) return null;
  const { breakdowns = [] } = step.figures;
  const stop = Math.max(0, ...breakdowns.map(({ repair }) => meanOf(repair)));
  return { coverSeconds: Math.max(demand.line.cover, stop), travelSeconds: travelTo(step, demand) };
}

function travelTo(step: DemandStep, demand: Demand): number {
  const travel = before(step, demand)?.figures.travel;
  return travel == null ? 0 : meanOf(travel);
}

function before(step: DemandStep, { steps }: Demand): DemandStep | undefined {
  return steps[steps.indexOf(step) - 1];
}
