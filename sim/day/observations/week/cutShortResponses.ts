import type { Crew, Plan } from "../../../asked/plan/index.ts";
import type { DaysRecord } from "../../engine/index.ts";
import { countedDays, type WeekResponse } from "./weekResponse.ts";

const CUT_SHORT = "cutShort.";

const FULL = `${CUT_SHORT}full.`;

/** For each crew of which people may be missing, and for each chiller: whether a week was cut short by it. */
export function cutShortResponses(plan: Plan): WeekResponse[] {
  const row = (key: string, label: string, is: (record: DaysRecord) => boolean): WeekResponse => ({
    ...{ key, label: `Weeks cut short: ${label}`, unit: "share of weeks", format: "share", better: "less", needs: [] },
    of: (_, record) => (record.status !== "finished" && is(record) ? 1 : 0),
  });
  return [
    ...crewsThatMayLack(plan).map((name) =>
      row(`${CUT_SHORT}${name}`, `too few of ${name} came, and what waited for them was never done`, (record) =>
        lacked(record, name),
      ),
    ),
    ...chillers(plan).map((name) =>
      row(`${FULL}${name}`, `${name} was full, and the line stood before it`, (record) => wasFull(record, name)),
    ),
  ];
}

/** Kept of every study of weeks, so that a week cut short is never told without its reason. */
export function cutShortKeys(plan: Plan): string[] {
  if (plan.week === undefined) return [];
  return [
    ...crewsThatMayLack(plan).map((name) => `${CUT_SHORT}${name}`),
    ...chillers(plan).map((name) => `${FULL}${name}`),
  ];
}

/** Stages that heads may stay in overnight. */
function chillers(plan: Plan): string[] {
  return [...new Set(countedDays(plan).flatMap((day) => (day.plan.day.overnight ?? []).map(({ stage }) => stage)))];
}

/** Nobody takes heads out of the stage any more on the day that did not end, and heads wait for a place in it. */
function wasFull({ days }: DaysRecord, stage: string): boolean {
  const { left } = days.at(-1)!;
  return (
    left.some((each) => each.stage === stage && each.reason === "tomorrow") &&
    left.some(({ reason }) => reason === "the next stage")
  );
}

function crewsThatMayLack(plan: Plan): string[] {
  const days = countedDays(plan).map((day) => day.plan);
  const mayLack = ({ absentShare, cover }: Crew) => absentShare > 0 || cover !== undefined;
  return [...new Set(days.flatMap(({ crews }) => crews.filter(mayLack).map(({ name }) => name)))];
}

/** The day that did not end waits for people of the crew, and no shift had more of them to send. */
function lacked({ days }: DaysRecord, crew: string): boolean {
  const { left, crews } = days.at(-1)!;
  const isEmpty = Math.max(...crews.find(({ name }) => name === crew)!.people) === 0;
  return left.some(({ reason, of }) => {
    if (!of.includes(crew)) return false;
    return reason === "people" || reason === "more people" || (reason === "a repair" && isEmpty);
  });
}
