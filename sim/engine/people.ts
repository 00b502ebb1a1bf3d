import { bookCrew, peopleOnDuty } from "./accounting.ts";
import { type DayState, NONE } from "./dayState.ts";
import type { StageState } from "./stageState.ts";

/** People of the crew who could begin something now. */
export function freePeople(day: DayState, crew: number): number {
  return peopleOnDuty(day, crew) - day.busyPeople[crew]!;
}

/** No crew of the stage has enough free people. */
export const NOBODY = -2;

/** The first of the stage's crews that has enough free people, or NOBODY; NONE for a stage that needs no people. */
export function crewFor(day: DayState, { people, crews }: StageState): number {
  if (people === 0) return NONE;
  for (let row = 0; row < crews.length; row++) {
    if (freePeople(day, crews[row]!) >= people) return crews[row]!;
  }
  return NOBODY;
}

/** Takes people for a position of the stage; the seconds they have to walk. */
export function claimForStage(day: DayState, crew: number, stage: StageState): number {
  claimPeople(day, crew, stage.people);
  const walkSeconds = day.crews.walkSeconds[crew]!;
  return walkSeconds > 0 && walks(day, crew, stage) ? walkSeconds : 0;
}

export function releaseFromStage(day: DayState, crew: number, stage: StageState): void {
  releasePeople(day, crew, stage.people);
  if (day.crews.walkSeconds[crew]! > 0) day.located[rowOf(day, crew, stage)]! += stage.people;
}

/** True when the test holds for every crew of the stage; false for a stage without crews. */
export function everyCrew(
  day: DayState,
  { crews }: StageState,
  test: (day: DayState, crew: number) => boolean,
): boolean {
  for (let row = 0; row < crews.length; row++) if (!test(day, crews[row]!)) return false;
  return crews.length > 0;
}

export function claimPeople(day: DayState, crew: number, people: number): void {
  bookCrew(day, crew);
  day.busyPeople[crew]! += people;
}

export function releasePeople(day: DayState, crew: number, people: number): void {
  bookCrew(day, crew);
  day.busyPeople[crew]! -= people;
}

/** Who worked here last comes first, then those who have not worked yet, then others, who walk. True when anyone walks. */
function walks(day: DayState, crew: number, stage: StageState): boolean {
  const { people } = stage;
  const here = rowOf(day, crew, stage);
  const near = Math.min(people, day.located[here]!);
  day.located[here]! -= near;
  const missing = day.crews.peopleMax[crew]! - peopleOnDuty(day, crew);
  const fresh = Math.min(people - near, Math.max(0, day.unlocated[crew]! - missing));
  day.unlocated[crew]! -= fresh;
  let left = people - near - fresh;
  const walk = left > 0;
  const { stationFrom } = day.crews;
  for (let row = stationFrom[crew]!; left > 0 && row < stationFrom[crew + 1]!; row++) {
    const taken = Math.min(left, day.located[row]!);
    day.located[row]! -= taken;
    left -= taken;
  }
  return walk;
}

function rowOf(day: DayState, crew: number, stage: StageState): number {
  const { stations, stationFrom } = day.crews;
  let row = stationFrom[crew]!;
  while (stations[row] !== stage.index) row++;
  return row;
}
