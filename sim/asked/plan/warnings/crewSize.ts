import { writtenMeanOf } from "../../../maths/varying/index.ts";
import { formatNumber, formatRate } from "../../../text/units/index.ts";
import type { Fault } from "../fault.ts";
import { listWords } from "../listWords.ts";
import type { Crew, Plan } from "../plan.ts";
import { faultAt, locatedList } from "../rules/located.ts";
import { type MannedPlace, workPlaces } from "./mannedPlaces.ts";

/**
 * Crews that are smaller than the positions they have to man. A crew with several places is meant to be shared: it may
 * have fewer people than all of them take together, but not fewer than one of them takes, nor too few for the work of the
 * plan's target. Shifts without anybody for a place are told elsewhere.
 */
export function crewSize(plan: Plan, json: unknown): Fault[] {
  const places = workPlaces(plan).filter(({ crews }) => crews.length > 0);
  const few = places.flatMap((place) => neverManned(plan, json, place));
  return [...few, ...plan.crews.flatMap((crew) => tooMuchWork(plan, json, crew, places))];
}

function neverManned(plan: Plan, json: unknown, place: MannedPlace): Fault[] {
  const { name, positions, crews, peoplePerPosition } = place;
  const wanted = positions * peoplePerPosition;
  const short = plan.day.shifts.flatMap((shift, row) => {
    const people = sum(crews.map((crew) => peopleOf(plan, crew)[row]!));
    return people >= peoplePerPosition && people < wanted ? [{ shift: shift.name, people }] : [];
  });
  if (short.length === 0) return [];
  const least = Math.min(...short.map(({ people }) => people));
  const manned = Math.floor(least / peoplePerPosition);
  const shifts = short.length === plan.day.shifts.length ? "" : ` in ${listWords(short.map(({ shift }) => shift))}`;
  const who = crews.length === 1 ? `'${crews[0]}' has` : `${listWords(crews)} together have`;
  const all = crews.some((crew) => isShared(plan, crew)) ? "even if all of them work there, " : "";
  const found = `${who} ${count(least, "person", "people")}${shifts}, but the ${count(positions, "position", "positions")} of '${name}' take ${wanted}: ${all}${count(positions - manned, "position is", "positions are")} never manned`;
  const remedy = `give ${wanted} people, or '${name}' ${count(manned, "position", "positions")}`;
  return [faultAt(pathOf(json, crews[0]!), found, "", remedy)];
}

/** Of a shared crew: what it can do at most, all of it at work all the time, against the target. */
function tooMuchWork(plan: Plan, json: unknown, crew: Crew, places: readonly MannedPlace[]): Fault[] {
  const target = plan.targetHeadsPerSecond;
  const own = places.filter(({ crews, cycleSeconds }) => crews.length === 1 && crews[0] === crew.name && cycleSeconds);
  const people = Math.max(...crew.people);
  const wanted = sum(own.map((place) => place.positions * place.peoplePerPosition));
  if (target === null || own.length < 2 || people === 0 || people >= wanted) return [];
  const seconds = sum(own.map((place) => place.peoplePerPosition * writtenMeanOf(place.cycleSeconds!)));
  const needed = target * seconds;
  if (needed <= people) return [];
  const names = listWords(own.map(({ name }) => name));
  const found = `'${crew.name}' has at most ${count(people, "person", "people")} for the ${wanted} that the positions of ${names} take; the target of ${formatRate(target)} keeps ${formatNumber(Number(needed.toFixed(1)))} people at work there all the time`;
  const remedy = `${Math.ceil(needed)} people or more, or a lower target`;
  return [faultAt(pathOf(json, crew.name), found, "", remedy)];
}

/** The crew has other work too: at another place, repairs, vessels. */
function isShared(plan: Plan, crew: string): boolean {
  const all = workPlaces(plan);
  const repairs = all.some(({ breakdowns }) => breakdowns.some((breakdown) => breakdown.crew === crew));
  const shared = plan.sharedBreakdowns.some((breakdown) => breakdown.crew === crew);
  const vessels = plan.vessels.some((vessel) => vessel.crew === crew);
  return all.filter(({ crews }) => crews.includes(crew)).length > 1 || repairs || shared || vessels;
}

function peopleOf({ crews }: Plan, name: string): readonly number[] {
  return crews.find((crew) => crew.name === name)!.people;
}

function pathOf(json: unknown, crew: string): (string | number)[] {
  const found = locatedList(json, "crews").find(({ value }) => value.name === crew);
  return [...(found?.at ?? ["crews"]), "people"];
}

function count(number: number, one: string, more: string): string {
  return `${number} ${number === 1 ? one : more}`;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
