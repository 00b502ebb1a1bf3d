import { CREW_PEOPLE } from "../line/index.ts";
import { bookCrew, peopleOnDuty } from "./accounting.ts";
import type { CrewState } from "./state/crewState.ts";
import type { DayState } from "./state/dayState.ts";
import type { StageState } from "./state/stageState.ts";

/** People of the crew who could begin something now. */
export function freePeople(crew: CrewState): number {
  return peopleOnDuty(crew) - crew.busy;
}

/** No crew of the stage has enough free people. */
export const NOBODY = undefined;

/** The first of the stage's crews that has enough free people, or NOBODY; null for a stage that needs no people. */
export function crewFor({ people, crews }: StageState): CrewState | null | typeof NOBODY {
  if (people === 0) return null;
  for (let row = 0; row < crews.length; row++) {
    if (freePeople(crews[row]!) >= people) return crews[row]!;
  }
  return NOBODY;
}

/** Takes people for a position of the stage; the seconds they have to walk. */
export function claimForStage(day: DayState, crew: CrewState, stage: StageState): number {
  claimPeople(day, crew, stage.people);
  moveTo(day, crew, stage, stage.people);
  return crew.walkSeconds > 0 && walks(crew, stage) ? crew.walkSeconds : 0;
}

export function releaseFromStage(day: DayState, crew: CrewState, stage: StageState): void {
  releasePeople(day, crew, stage.people);
  moveTo(day, crew, stage, -stage.people);
  if (crew.walkSeconds > 0) crew.located[crew.stations.indexOf(stage)]! += stage.people;
}

/** So many people more are at work at the station, or fewer. */
function moveTo(day: DayState, crew: CrewState, stage: StageState, people: number): void {
  const here = crew.at[stage.index]!;
  here.set(here.heads + people, day.now);
}

/** So many people more are at a repair or an emptying, or fewer. */
export function claimForJob(day: DayState, crew: CrewState, people: 1 | -1): void {
  if (people > 0) claimPeople(day, crew, 1);
  else releasePeople(day, crew, 1);
  crew.atJobs.set(crew.atJobs.heads + people, day.now);
}

/** True when the stage has crews and nobody of them is on duty. */
export function isUnmanned({ crews }: StageState): boolean {
  return crews.length > 0 && crews.every((crew) => peopleOnDuty(crew) === 0);
}

/** True when nobody of any of the stage's crews is on duty but someone will come back: a planned absence. */
export function isStaffAway(day: DayState, { crews }: StageState): boolean {
  for (let row = 0; row < crews.length; row++) if (!isAway(day, crews[row]!)) return false;
  return crews.length > 0;
}

function isAway(day: DayState, { breaks, people, index }: CrewState): boolean {
  return breaks > 0 || (people === 0 && moreShiftsFor(day, index));
}

function moreShiftsFor(day: DayState, crew: number): boolean {
  const { calendar } = day.line;
  for (let row = day.calendarRow; row < calendar.count; row++) {
    if (calendar.action[row] === CREW_PEOPLE && calendar.target[row] === crew && calendar.amount[row]! > 0) return true;
  }
  return false;
}

function claimPeople(day: DayState, crew: CrewState, people: number): void {
  bookCrew(day, crew);
  crew.busy += people;
}

function releasePeople(day: DayState, crew: CrewState, people: number): void {
  bookCrew(day, crew);
  crew.busy -= people;
}

/** Who worked here last comes first, then those who have not worked yet, then others, who walk. True when anyone walks. */
function walks(crew: CrewState, stage: StageState): boolean {
  const { people } = stage;
  const { located, stations } = crew;
  const here = stations.indexOf(stage);
  const near = Math.min(people, located[here]!);
  located[here]! -= near;
  const missing = crew.peopleMax - peopleOnDuty(crew);
  const fresh = Math.min(people - near, Math.max(0, crew.unlocated - missing));
  crew.unlocated -= fresh;
  let left = people - near - fresh;
  const walk = left > 0;
  for (let row = 0; left > 0 && row < located.length; row++) {
    const taken = Math.min(left, located[row]!);
    located[row]! -= taken;
    left -= taken;
  }
  return walk;
}
