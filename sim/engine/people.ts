import { CREW_PEOPLE } from "../line/index.ts";
import { bookCrew, peopleOnDuty } from "./accounting.ts";
import { callCrew } from "./dispatch.ts";
import type { CrewState } from "./state/crewState.ts";
import type { DayState } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";

/** People of the crew who could begin something now. */
export function freePeople(crew: CrewState): number {
  return peopleOnDuty(crew) - crew.busy;
}

/** The first of the stage's crews that has enough free people, or null. */
export function crewFor({ people, crews }: StageState): CrewState | null {
  for (let row = 0; row < crews.length; row++) {
    if (freePeople(crews[row]!) >= people) return crews[row]!;
  }
  return null;
}

/** Takes people for a position of the stage; the seconds they have to walk. */
export function claimForStage(day: DayState, crew: CrewState, stage: StageState): number {
  claimPeople(day, crew, stage.people);
  return crew.walkSeconds > 0 && walks(crew, stage) ? crew.walkSeconds : 0;
}

/** Whoever worked at the position is free. */
export function releaseHands(day: DayState, position: PositionState): void {
  const { crew, stage } = position;
  if (crew === null) return;
  position.crew = null;
  if (crew.walkSeconds > 0) crew.located[crew.stations.indexOf(stage)]! += stage.people;
  releasePeople(day, crew, stage.people);
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

export function claimPeople(day: DayState, crew: CrewState, people: number): void {
  bookCrew(day, crew);
  crew.busy += people;
}

/** They look for other work when the instant is over. */
export function releasePeople(day: DayState, crew: CrewState, people: number): void {
  bookCrew(day, crew);
  crew.busy -= people;
  callCrew(day, crew);
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
