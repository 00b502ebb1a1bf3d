import type { DayState } from "./dayState.ts";
import { dispatchCrew, startWaiting } from "./flow.ts";
import { releasePeople } from "./people.ts";
import { emptyVessel } from "./vessels.ts";

/** A vessel is empty: who emptied it is free, and the stages it stopped go on. */
export function turnVessel(day: DayState, vessel: number): void {
  const { crew, feederFrom, feeder } = day.line.vessels;
  emptyVessel(day, vessel);
  for (let row = feederFrom[vessel]!; row < feederFrom[vessel + 1]!; row++) startWaiting(day, feeder[row]!);
  if (crew[vessel]! < 0) return;
  releasePeople(day, crew[vessel]!, 1);
  dispatchCrew(day, crew[vessel]!);
}
