import { chillingOf } from "../../../maths/chilling/index.ts";
import { writtenMeanOf } from "../../../maths/varying/index.ts";
import { does } from "../../../text/kinds/index.ts";
import { formatDuration, formatRate } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { stationsIn } from "../mapWork.ts";
import type { Dwell, Plan, Stage } from "../plan.ts";
import { faultAt, type Located } from "../rules/located.ts";
import { stagesOf } from "../rules/stages.ts";

interface Rate {
  headsPerSecond: number;
  words: string;
}

/**
 * Dwells with fewer places than the rate times the mean dwell (Little 1961: heads present = rate x time). The rate is the
 * plan's target or, without one, that of the slowest station. A chilling time that is computed is that of a carcass of mean weight: heads
 * leave in order, so that more places than told may be needed where weights differ. A dwell that holds every head of the supply is large
 * enough.
 */
export function dwellCapacity(plan: Plan, json: unknown): Fault[] {
  const wanted = wantedRate(plan);
  const places = stagesOf(json);
  return wanted === null
    ? []
    : plan.line.flatMap((stage, index) => tooFewPlaces(stage, plan, (places[index] as Located).at, wanted));
}

function tooFewPlaces(stage: Stage, plan: Plan, at: Located["at"], wanted: Rate): Fault[] {
  if (!does(stage, "hold heads") || stage.offLine) return [];
  const seconds = meanDwell(stage, plan);
  if (seconds === null) return [];
  const allowed = stage.places / seconds;
  if (allowed >= wanted.headsPerSecond || stage.places >= headsOf(plan)) return [];
  const what = stage.dwell.kind === "drawn" ? "a mean dwell of" : "a chilling time (computed, mean weight) of";
  const found = `${stage.places} places with ${what} ${formatDuration(seconds)} allow no more than ${formatRate(allowed)}, less than ${wanted.words}`;
  const remedy = `${Math.ceil(wanted.headsPerSecond * seconds)} places would allow it`;
  return [faultAt([...at, "places"], found, "", remedy)];
}

/** Null when there is no limit. */
function meanDwell({ dwell }: Dwell, plan: Plan): number | null {
  const seconds = dwell.kind === "drawn" ? writtenMeanOf(dwell.seconds) : chillingSeconds(dwell.chilling, plan);
  return seconds > 0 ? seconds : null;
}

function chillingSeconds(chilling: Extract<Dwell["dwell"], { kind: "chilling" }>["chilling"], plan: Plan): number {
  return chillingOf(chilling, meanWeightKg(plan) * chilling.carcassShare).seconds;
}

/** Of the heads that are brought. */
function meanWeightKg({ supply }: Plan): number {
  if (supply.kind !== "loads") return writtenMeanOf(supply.liveWeightKg);
  const heads = supply.loads.map(({ crates, headsPerCrate, comesShare }) => crates * headsPerCrate * comesShare);
  const kg = supply.loads.reduce((sum, { liveWeightKg }, at) => sum + heads[at]! * writtenMeanOf(liveWeightKg), 0);
  return kg / heads.reduce((sum, count) => sum + count, 0);
}

function headsOf({ supply }: Plan): number {
  if (supply.kind !== "loads") return supply.heads;
  return supply.loads.reduce((sum, { crates, headsPerCrate }) => sum + crates * headsPerCrate, 0);
}

function wantedRate({ targetHeadsPerSecond, line }: Plan): Rate | null {
  if (targetHeadsPerSecond !== null) {
    return { headsPerSecond: targetHeadsPerSecond, words: `the target of ${formatRate(targetHeadsPerSecond)}` };
  }
  const rates = line.filter(({ offLine }) => !offLine).flatMap(ratesOf);
  const slowest = rates.toSorted((a, b) => a.headsPerSecond - b.headsPerSecond)[0];
  if (slowest === undefined) return null;
  const words = `the ${formatRate(slowest.headsPerSecond)} of the slowest station, '${slowest.words}'`;
  return { ...slowest, words };
}

/** What a stage can do on average, with its name. */
function ratesOf(stage: Stage): Rate[] {
  const carrying = does(stage, "carry stations")
    ? [{ headsPerSecond: 1 / stage.secondsPerShackle, words: stage.name }]
    : [];
  return [
    ...carrying,
    ...stationsIn(stage).map(({ name, positions, cycleSeconds }) => ({
      headsPerSecond: positions / writtenMeanOf(cycleSeconds),
      words: name,
    })),
  ];
}
