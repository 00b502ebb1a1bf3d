import { formatDuration, formatRate } from "../../units/index.ts";
import { writtenMeanOf } from "../../varying/index.ts";
import type { Fault } from "../fault.ts";
import type { Dwell, Plan, Stage } from "../plan.ts";
import { faultAt, type Located } from "../rules/located.ts";
import { stagesOf } from "../rules/stages.ts";

interface Rate {
  headsPerSecond: number;
  words: string;
}

/**
 * Dwells with fewer places than the rate times the mean dwell (Little 1961: heads present = rate x time). The rate is the
 * plan's target or, without one, that of the slowest station. Computed chilling times depend on weights not drawn yet.
 */
export function dwellCapacity(plan: Plan, json: unknown): Fault[] {
  const wanted = wantedRate(plan);
  const places = stagesOf(json);
  return wanted === null
    ? []
    : plan.line.flatMap((stage, index) => tooFewPlaces(stage, (places[index] as Located).at, wanted));
}

function tooFewPlaces(stage: Stage, at: Located["at"], wanted: Rate): Fault[] {
  const seconds = stage.kind === "dwell" && !stage.offLine ? meanDwell(stage) : null;
  if (stage.kind !== "dwell" || seconds === null) return [];
  const allowed = stage.places / seconds;
  if (allowed >= wanted.headsPerSecond) return [];
  const found = `${stage.places} places with a mean dwell of ${formatDuration(seconds)} allow no more than ${formatRate(allowed)}, less than ${wanted.words}`;
  const remedy = `${Math.ceil(wanted.headsPerSecond * seconds)} places would allow it`;
  return [faultAt([...at, "places"], found, "", remedy)];
}

/** Null when there is no limit, or none that can be told here. */
function meanDwell({ dwell }: Dwell): number | null {
  const seconds = dwell.kind === "drawn" ? writtenMeanOf(dwell.seconds) : 0;
  return seconds > 0 ? seconds : null;
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
  if (stage.kind === "dwell") return [];
  const stations = stage.kind === "station" ? [stage] : stage.stations;
  const carried = stage.kind === "chain" ? [{ headsPerSecond: 1 / stage.secondsPerShackle, words: stage.name }] : [];
  return [
    ...carried,
    ...stations.map(({ name, positions, cycleSeconds }) => ({
      headsPerSecond: positions / writtenMeanOf(cycleSeconds),
      words: name,
    })),
  ];
}
