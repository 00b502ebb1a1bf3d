import { listWords, type Plan } from "../../asked/plan/index.ts";
import { does } from "../../text/kinds/index.ts";
import { formatClock } from "../../text/units/index.ts";
import type { CrewRecord, DayRecord, LeftRecord } from "../engine/index.ts";
import { steps, workplace } from "../line/index.ts";

/** What must be said of a day beside its figures: who was absent, and which heads were left where and why. */
export function dayNotes(plan: Plan, day: DayRecord): string[] {
  return [...absentWords(plan, day), ...leftWords(plan, day)];
}

/** "Absent today: 'evisceration' 2 of 6."; nothing where nobody can be absent. */
export function absentWords(plan: Plan, day: DayRecord): string[] {
  if (plan.crews.every(({ absentShare }) => absentShare === 0)) return [];
  const missing = day.crews.filter(({ absent }) => absent.some((people) => people > 0));
  if (missing.length === 0) return ["Nobody is absent today."];
  return [`Absent today: ${missing.map((crew) => `${quoted(crew.name)} ${byShift(plan, crew)}`).join(", ")}.`];
}

/** "2 of 6", or "2 of 6 (early), 1 of 4 (late)" where the shifts differ; a shift without people is not told. */
function byShift(plan: Plan, { people, absent }: CrewRecord): string {
  const told = plan.day.shifts.flatMap(({ name }, shift) => {
    const all = people[shift]! + absent[shift]!;
    return all === 0 ? [] : [{ name, words: `${absent[shift]} of ${all}` }];
  });
  if (new Set(told.map(({ words }) => words)).size === 1) return told[0]!.words;
  return told.map(({ name, words }) => `${words} (${name})`).join(", ");
}

/** Why the day did not end by itself: first what holds heads up, then who waits behind it. */
export function leftWords(plan: Plan, day: DayRecord): string[] {
  if (day.status === "finished") return [];
  if (day.week?.status === "overrun") return [overrunWords(plan, day.week)];
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
    if (last < 0) return `nobody of ${quoted(name)} came today${allAbsent(record)}`;
    const end = formatClock(day.startClockSeconds + plan.day.shifts[last]!.toSeconds);
    return `nobody of ${quoted(name)} is on duty after ${end}, the end of its last shift`;
  });
  return words.join("; ");
}

function allAbsent({ absent }: CrewRecord): string {
  const most = Math.max(...absent);
  return most === 0 ? "" : ` (${most} absent)`;
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

function overrunWords({ week }: Plan, { days }: NonNullable<DayRecord["week"]>): string {
  const working = week!.days.filter(({ plan }) => plan !== null);
  const [last, next] = [working[days.length - 1]!, working[days.length]!];
  return `Work of ${last.name} was not over when ${next.name} was to begin; the week is cut off there.`;
}
