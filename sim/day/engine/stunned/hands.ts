import { crewFor, freePeople } from "../people.ts";
import type { CrewState } from "../state/crewState.ts";
import type { DayState } from "../state/dayState.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { crewLeaves } from "./plannedAhead.ts";
import { secondsLeft } from "./secondsLeft.ts";

/** People of one crew by when each of them is expected to be free, and when the crew leaves. */
export interface Hands {
  freeAt: number[];
  leavesAt: number;
}

/**
 * Who is expected to be free for the stage and when, crew by crew: those who stand idle, and those at work who are not bound
 * for a break. One of them may have to stun the next head first. Who repairs or empties is not counted on.
 */
export function handsFor(day: DayState, care: StunnedState, stage: StageState): Hands[] {
  const stunner = care.from.people > 0 ? crewFor(care.from) : null;
  return stage.crews.map((crew) => {
    const freeAt = [...idle(day, crew, stage), ...atWork(day, care, crew, stage)];
    if (crew === stunner) takeEarliest(freeAt, care.from.people, day.now + care.meanSeconds[care.from.index]!);
    return { freeAt, leavesAt: crewLeaves(day, crew) };
  });
}

function idle(day: DayState, crew: CrewState, stage: StageState): number[] {
  const free = Math.max(0, freePeople(crew));
  const here = crew.walkSeconds > 0 ? crew.located[crew.stations.indexOf(stage)]! : free;
  return Array.from({ length: free }, (_, rank) => (rank < here ? day.now : day.now + crew.walkSeconds));
}

function atWork(day: DayState, care: StunnedState, crew: CrewState, here: StageState): number[] {
  const freeAt: number[] = [];
  for (const stage of crew.stations) {
    const walk = stage === here ? 0 : crew.walkSeconds;
    for (const position of stage.positions) {
      if (position.crew !== crew || position.stoppages > 0 || position.breaksSeen < crew.breaksBegun) continue;
      const free = day.now + secondsLeft(day, care, position) + walk;
      for (let person = 0; person < stage.people; person++) freeAt.push(free);
    }
  }
  return freeAt;
}

/** When so many people of one crew can begin together; takes them until `end` after that begins. Infinity: nobody can. */
export function bookHands(hands: readonly Hands[], people: number, from: number, work: number): number {
  let best: Hands | null = null;
  let begins = Infinity;
  for (const each of hands) {
    if (each.freeAt.length < people) continue;
    each.freeAt.sort((a, b) => a - b);
    const ready = Math.max(from, each.freeAt[people - 1]!);
    if (ready < each.leavesAt && ready < begins) {
      best = each;
      begins = ready;
    }
  }
  if (best !== null) takeEarliest(best.freeAt, people, begins + work);
  return begins;
}

function takeEarliest(freeAt: number[], people: number, until: number): void {
  freeAt.sort((a, b) => a - b);
  for (let person = 0; person < Math.min(people, freeAt.length); person++) freeAt[person] = until;
}
