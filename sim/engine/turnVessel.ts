import { CHAIN, DWELL } from "../line/index.ts";
import { wakeChain } from "./chainRing.ts";
import type { DayState } from "./dayState.ts";
import { dispatchCrew, scheduleDwell, startWaiting } from "./flow.ts";
import { releasePeople } from "./people.ts";
import { emptyVessel } from "./vessels.ts";

/** A vessel is empty: who emptied it is free, and the stages it stopped go on. */
export function turnVessel(day: DayState, vessel: number): void {
  const { crew, feederFrom, feeder } = day.vessels;
  emptyVessel(day, vessel);
  for (let row = feederFrom[vessel]!; row < feederFrom[vessel + 1]!; row++) callFeeder(day, feeder[row]!);
  if (crew[vessel]! < 0) return;
  releasePeople(day, crew[vessel]!, 1);
  dispatchCrew(day, crew[vessel]!);
}

/** A stage that the full vessel stopped looks again. */
function callFeeder(day: DayState, stage: number): void {
  const { kind, chain } = day.stages;
  if (kind[stage] === DWELL) resumeDwell(day, stage);
  else if (kind[stage] === CHAIN) wakeChain(day, chain[stage]!);
  else startWaiting(day, stage);
}

/** Only a head that the vessel held is called again; one that waits for a place is called when there is one. */
function resumeDwell(day: DayState, stage: number): void {
  const position = day.stages.positionFrom[stage]!;
  if (!day.done[position]) return;
  day.done[position] = 0;
  scheduleDwell(day, stage);
}
