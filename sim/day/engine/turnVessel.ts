import { CHAIN, DWELL } from "../line/index.ts";
import { wakeChain } from "./chainRing.ts";
import { drainDwell, startWaiting } from "./flow.ts";
import { releaseFromJob } from "./people.ts";
import type { DayState } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";
import { emptyVessel } from "./vessels.ts";

/** A vessel is empty: who emptied it is free, and the stages it stopped go on. */
export function turnVessel(day: DayState, vessel: number): void {
  const { feederFrom, feeder } = day.vessels;
  emptyVessel(day, vessel);
  for (let row = feederFrom[vessel]!; row < feederFrom[vessel + 1]!; row++) callFeeder(day, day.stageAt[feeder[row]!]!);
  releaseFromJob(day, day.failures.count + vessel);
}

/** A stage that the full vessel stopped looks again. */
function callFeeder(day: DayState, stage: StageState): void {
  if (stage.kind === DWELL) drainDwell(day, stage);
  else if (stage.kind === CHAIN) wakeChain(day, stage.chain!);
  else startWaiting(day, stage);
}
