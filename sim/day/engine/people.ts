import { CREW_PEOPLE } from "../line/index.ts";
import { bookCrew } from "./accounting.ts";
import { goLate } from "./breaks.ts";
import { callCrew } from "./calls.ts";
import { type CrewState, peopleHere } from "./state/crewState.ts";
import { type DayState, NONE } from "./state/dayState.ts";
import type { PositionState } from "./state/positionState.ts";
import type { StageState } from "./state/stageState.ts";

/** People of the crew who could begin something now. */
export function freePeople(crew: CrewState): number {
  return peopleHere(crew) - crew.busy;
}

/** People of the crew who may begin something now or when their work is done: not on a break, and not bound for one. */
function peopleOnDuty(crew: CrewState): number {
  return Math.max(0, peopleHere(crew) - crew.owing);
}

/** The first of the stage's crews that has enough free people, or null. */
export function crewFor({ people, crews }: StageState): CrewState | null {
  for (let row = 0; row < crews.length; row++) {
    if (freePeople(crews[row]!) >= people) return crews[row]!;
  }
  return null;
}

/** Takes people for the position; the seconds they have to walk. */
export function claimHands(day: DayState, crew: CrewState, position: PositionState): number {
  const { stage } = position;
  position.crew = crew;
  position.breaksSeen = crew.breaksBegun;
  claimPeople(day, crew, stage.people);
  moveTo(day, crew, stage, stage.people);
  return crew.walkSeconds > 0 && walks(crew, stage) ? crew.walkSeconds : 0;
}

/** Whoever worked at the position is free. */
export function releaseHands(day: DayState, position: PositionState): void {
  const { crew, stage } = position;
  if (crew === null) return;
  position.crew = null;
  moveTo(day, crew, stage, -stage.people);
  if (crew.walkSeconds > 0) crew.located[crew.stations.indexOf(stage)]! += stage.people;
  releasePeople(day, crew, stage.people, position.breaksSeen);
}

/** So many people more are at work at the station, or fewer. */
function moveTo(day: DayState, crew: CrewState, stage: StageState, people: number): void {
  const here = crew.at[stage.index]!;
  here.set(here.heads + people, day.now);
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

function isAway(day: DayState, crew: CrewState): boolean {
  if (peopleOnDuty(crew) > 0) return false;
  return crew.people > 0 || moreShiftsFor(day, crew.index);
}

function moreShiftsFor(day: DayState, crew: number): boolean {
  const { calendar } = day.line;
  for (let row = day.calendarRow; row < calendar.count; row++) {
    if (calendar.action[row] === CREW_PEOPLE && calendar.target[row] === crew && calendar.amount[row]! > 0) return true;
  }
  return false;
}

/** Somebody of the crew goes to a repair or an emptying. */
export function claimForJob(day: DayState, crew: CrewState, job: number): void {
  claimPeople(day, crew, 1);
  crew.atJobs.set(crew.atJobs.heads + 1, day.now);
  day.jobCrew[job] = crew.index;
  day.jobBreaksSeen[job] = crew.breaksBegun;
}

/** Whoever was at the job is free. */
export function releaseFromJob(day: DayState, job: number): void {
  const crew = day.crewAt[day.jobCrew[job]!];
  if (crew === undefined) return;
  day.jobCrew[job] = NONE;
  crew.atJobs.set(crew.atJobs.heads - 1, day.now);
  releasePeople(day, crew, 1, day.jobBreaksSeen[job]!);
}

function claimPeople(day: DayState, crew: CrewState, people: number): void {
  bookCrew(day, crew);
  crew.busy += people;
}

/** They go on a break that is due, or look for other work when the instant is over. `seen`: see breaks.ts. */
function releasePeople(day: DayState, crew: CrewState, people: number, seen: number): void {
  bookCrew(day, crew);
  crew.busy -= people;
  crew.lastWork = day.now;
  if (seen < crew.breaksBegun) goLate(day, crew, people, seen);
  callCrew(day, crew);
  day.path?.endsWork(crew.index);
}

/** Who worked here last comes first, then those who have not worked yet, then others, who walk. True when anyone walks. */
function walks(crew: CrewState, stage: StageState): boolean {
  const { people } = stage;
  const { located, stations } = crew;
  const here = stations.indexOf(stage);
  const near = Math.min(people, located[here]!);
  located[here]! -= near;
  const missing = crew.peopleMax - crew.people;
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
