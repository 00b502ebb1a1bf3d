import { crewFor, freePeople } from "../people.ts";
import type { CrewState } from "../state/crewState.ts";
import type { DayState } from "../state/dayState.ts";
import type { StageState } from "../state/stageState.ts";
import type { StunnedState } from "../state/stunnedState.ts";
import { crewLeaves } from "./plannedAhead.ts";
import { secondsLeft } from "./secondsLeft.ts";
import { Times } from "./times.ts";

/** People of one crew by when each of them is expected to be free, ascending, and when the crew leaves. */
class Hands {
  readonly freeAt = new Times();
  leavesAt = Number.NaN;
}

/** Of the stage looked at, in the order of its crews. */
const hands: Hands[] = [];

/**
 * Who is expected to be free for the stage and when, crew by crew: those who stand idle, and those at work who are not bound
 * for a break. One of them may have to stun the next head first. Who repairs or empties is not counted on.
 */
export function countHands(day: DayState, care: StunnedState, stage: StageState): void {
  const { from } = care;
  const { crews } = stage;
  const stunner = from.people > 0 ? crewFor(from) : null;
  while (hands.length < crews.length) hands.push(new Hands());
  for (let row = 0; row < crews.length; row++) {
    const crew = crews[row]!;
    const { freeAt } = hands[row]!;
    freeAt.clear();
    addIdle(day, crew, stage, freeAt);
    addAtWork(day, care, crew, stage, freeAt);
    if (crew === stunner) freeAt.replaceFirst(from.people, day.now + care.meanSeconds[from.index]!);
    hands[row]!.leavesAt = crewLeaves(day, crew);
  }
}

function addIdle({ now }: DayState, crew: CrewState, stage: StageState, freeAt: Times): void {
  const free = freePeople(crew);
  const here = crew.walkSeconds > 0 ? crew.located[crew.stations.indexOf(stage)]! : free;
  for (let rank = 0; rank < free; rank++) freeAt.push(rank < here ? now : now + crew.walkSeconds);
}

function addAtWork(day: DayState, care: StunnedState, crew: CrewState, here: StageState, freeAt: Times): void {
  if (crew.busy === 0) return;
  const { stations } = crew;
  for (let row = 0; row < stations.length; row++) {
    const { positions, people } = stations[row]!;
    const walk = stations[row] === here ? 0 : crew.walkSeconds;
    for (let rank = 0; rank < positions.length; rank++) {
      const position = positions[rank]!;
      if (position.crew !== crew || position.downCauses > 0 || position.breaksSeen < crew.breaksBegun) continue;
      const free = day.now + secondsLeft(day, care, position) + walk;
      for (let person = 0; person < people; person++) freeAt.insert(free);
    }
  }
}

/** When people of one crew, as many as the stage needs, can begin together; takes them for so long. Infinity: nobody can. */
export function bookHands({ crews, people }: StageState, from: number, workSeconds: number): number {
  let best: Hands | null = null;
  let begins = Infinity;
  for (let row = 0; row < crews.length; row++) {
    const { freeAt, leavesAt } = hands[row]!;
    if (freeAt.count < people) continue;
    const ready = Math.max(from, freeAt.at(people - 1));
    if (ready < leavesAt && ready < begins) {
      best = hands[row]!;
      begins = ready;
    }
  }
  best?.freeAt.replaceFirst(people, begins + workSeconds);
  return begins;
}
