import { CHAIN, DWELL } from "../line/index.ts";
import { wakeChain } from "./chainRing.ts";
import { dispatchCrew, scheduleDwell, startWaiting } from "./flow.ts";
import { claimForJob } from "./people.ts";
import type { DayState } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";
import { emptyVessel } from "./vessels.ts";

/** A vessel is empty: who emptied it is free, and the stages it stopped go on. */
export function turnVessel(day: DayState, vessel: number): void {
  const { crew, feederFrom, feeder } = day.vessels;
  emptyVessel(day, vessel);
  for (let row = feederFrom[vessel]!; row < feederFrom[vessel + 1]!; row++) callFeeder(day, day.stageAt[feeder[row]!]!);
  const emptier = day.crewAt[crew[vessel]!];
  if (emptier === undefined) return;
  claimForJob(day, emptier, -1);
  dispatchCrew(day, emptier);
}

/** A stage that the full vessel stopped looks again. */
function callFeeder(day: DayState, stage: StageState): void {
  if (stage.kind === DWELL) resumeDwell(day, stage);
  else if (stage.kind === CHAIN) wakeChain(day, stage.chain!);
  else startWaiting(day, stage);
}

/** Only a head that the vessel held is called again; one that waits for a place is called when there is one. */
function resumeDwell(day: DayState, stage: StageState): void {
  const wayOut = stage.positions[0]!;
  if (!wayOut.done) return;
  wayOut.done = false;
  scheduleDwell(day, stage);
}
