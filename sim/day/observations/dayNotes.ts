import { listWords, type Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import { formatClock } from "../../text/units/index.ts";
import type { CrewRecord, DayRecord, DaysRecord, LeftRecord } from "../engine/index.ts";
import { steps, workplace } from "../line/index.ts";

/**
 * What must be said of a day beside its figures: who was absent, who stepped in, and which heads were left where and why. Of
 * a week: on which day it was cut off, if it was, and why.
 */
export function dayNotes(plan: Plan, day: DayRecord): string[] {
  if (day.week !== undefined) return weekLeftWords(plan, day.week);
  return [...absentWords(plan, day), ...coverWords(plan, day), ...leftWords(plan, day)];
}

/** "Absent today: 'evisceration' 2 of 6."; nothing where nobody can be absent. */
export function absentWords(plan: Plan, day: DayRecord): string[] {
  if (plan.crews.every(({ absentShare }) => absentShare === 0)) return [];
  const missing = day.crews.filter(({ absent }) => absent.some((people) => people > 0));
  if (missing.length === 0) return ["Nobody is absent today."];
  return [
    `Absent today: ${missing.map((crew) => `${quoted(crew.name)} ${absentByShift(plan, day, crew)}`).join(", ")}.`,
  ];
}

/** "2 of 6", or by shift. */
function absentByShift(plan: Plan, day: DayRecord, { name, people, absent, helpers = [] }: CrewRecord): string {
  return byShift(plan, (shift) => {
    const came = helpers.reduce((sum, each) => sum + each.people[shift]!, 0);
    const all = people[shift]! + absent[shift]! - came + lentBy(day, name, shift);
    return all === 0 ? null : `${absent[shift]} of ${all}`;
  });
}

/** People of the crew who work with others in that shift. */
function lentBy({ crews }: DayRecord, crew: string, shift: number): number {
  const helpers = crews.flatMap(({ helpers = [] }) => helpers.filter((each) => each.crew === crew));
  return helpers.reduce((sum, { people }) => sum + people[shift]!, 0);
}

/** "Who steps in today: 1 of 'evisceration' at 'rinsing'."; nothing where nobody does. */
export function coverWords(plan: Plan, { crews }: DayRecord): string[] {
  const told = crews.flatMap(({ name, helpers = [] }) =>
    helpers.map(({ crew, people }) => {
      const count = byShift(plan, (shift) => (people[shift] === 0 ? null : String(people[shift])));
      return `${count} of ${quoted(crew)} with ${quoted(name)}`;
    }),
  );
  return told.length === 0 ? [] : [`Who steps in today: ${told.join(", ")}.`];
}

/** What is said of each shift, once where it is the same for all: "2 of 6 (early), 1 of 4 (late)". Null: nothing of that one. */
function byShift({ day }: Plan, wordsOf: (shift: number) => string | null): string {
  const told = day.shifts.flatMap(({ name }, shift) => {
    const words = wordsOf(shift);
    return words === null ? [] : [{ name, words }];
  });
  if (new Set(told.map(({ words }) => words)).size === 1) return told[0]!.words;
  return told.map(({ name, words }) => `${words} (${name})`).join(", ");
}

/** Why the day did not end by itself: first what holds heads up, then who waits behind it. */
export function leftWords(plan: Plan, day: DayRecord): string[] {
  if (day.status === "finished") return [];
  const causes = day.left.filter(({ reason }) => reason !== "the next stage" && reason !== "hanging is over");
  const behind = day.left.filter(({ reason }) => reason === "the next stage");
  const sentences = causes.map(
    (left) => `${countWords(plan, left)} at ${quoted(left.stage)} ${reasonWords(plan, day, left)}.`,
  );
  if (behind.length === 0) return sentences;
  const waiting = behind.map((left) => `${countWords(plan, left)} at ${quoted(left.stage)}`).join(", ");
  return [...sentences, `Waiting for a place behind them: ${waiting}.`];
}

function countWords(plan: Plan, { stage, count }: LeftRecord): string {
  const isCrates = steps(plan).some((step) => does(step, "handle crates") && step.name === stage);
  if (isCrates) return count === 1 ? "1 crate" : `${count} crates`;
  return count === 1 ? "1 head" : `${count} heads`;
}

function reasonWords(plan: Plan, day: DayRecord, left: LeftRecord): string {
  const { reason, of, count } = left;
  const stay = count === 1 ? "stays unworked" : "stay unworked";
  switch (reason) {
    case "people":
      return `${stay}: ${nobodyWords(plan, day, left)}`;
    case "more people":
      return `${stay}: ${tooFewWords(plan, day, left)}`;
    case "a repair":
      return of.length === 0
        ? `${stay}: the station has broken down`
        : `${stay}: the station has broken down, and nobody of ${listWords(of)} is there to repair it or the repair is not over`;
    case "a full vessel":
      return `${stay}: ${listWords(of)} is full and not emptied`;
    case "a pause":
      return `${stay}: the station pauses by plan`;
    case "the hold before stunning":
      return `${count === 1 ? "is" : "are"} held back so that no stunned head waits`;
    case "tomorrow":
      return `${count === 1 ? "stays" : "stay"} there: nobody takes heads out any more today`;
    case "a gate":
      return `${count === 1 ? "is" : "are"} held back by a gate or a planned stop`;
    default:
      return `${count === 1 ? "is" : "are"} not through yet: their time is not over`;
  }
}

function nobodyWords(plan: Plan, day: DayRecord, { of }: LeftRecord): string {
  const words = of.map((name) => {
    const record = day.crews.find((crew) => crew.name === name)!;
    const last = record.people.findLastIndex((people) => people > 0);
    if (last < 0) return `nobody of ${quoted(name)} came today${allAbsent(record)}${noCover(plan, name)}`;
    const end = formatClock(day.startClockSeconds + plan.day.shifts[last]!.toSeconds);
    return `nobody of ${quoted(name)} is on duty after ${end}, the end of its last shift`;
  });
  return words.join("; ");
}

function allAbsent({ absent }: CrewRecord): string {
  const most = Math.max(...absent);
  return most === 0 ? "" : ` (${most} absent)`;
}

/** Who should have stepped in and had nobody to spare. */
function noCover({ crews }: Plan, name: string): string {
  const by = crews.find((crew) => crew.name === name)?.cover?.by.map(({ crew }) => crew) ?? [];
  return by.length === 0 ? "" : `, and ${listWords(by)} had nobody to spare`;
}

function tooFewWords(plan: Plan, day: DayRecord, { stage, of }: LeftRecord): string {
  const needs = steps(plan).map((step) => ({ step, place: workplace(step) }));
  const people = needs.find(({ step }) => step.name === stage)!.place.peoplePerPosition;
  const there = of.map((name) => {
    const record = day.crews.find((crew) => crew.name === name)!;
    const last = record.people.length - 1;
    const missing = record.absent[last]! === 0 ? "" : ` (${record.absent[last]} absent)`;
    return `${quoted(name)} has ${record.people[last]}${missing}`;
  });
  return `one position takes ${people} people, ${there.join(", ")}`;
}

function quoted(name: string): string {
  return `'${name}'`;
}

/** The day on which a week was cut off, and why. */
function weekLeftWords(plan: Plan, week: DaysRecord): string[] {
  if (week.status === "finished") return [];
  if (week.status === "overrun") return [overrunWords(plan, week)];
  const last = plan.week!.days.filter((day) => day.plan !== null)[week.days.length - 1]!;
  const record = week.days.at(-1)!;
  return [
    `The week is cut off on ${last.name}, which did not end.`,
    ...absentWords(last.plan!, record),
    ...leftWords(last.plan!, record),
  ];
}

function overrunWords({ week }: Plan, { days }: DaysRecord): string {
  const working = week!.days.filter(({ plan }) => plan !== null);
  const [last, next] = [working[days.length - 1]!, working[days.length]!];
  return `Work of ${last.name} was not over when ${next.name} was to begin; the week is cut off there.`;
}
