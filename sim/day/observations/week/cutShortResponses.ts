import type { Crew, Plan } from "../../../asked/plan/index.ts";
import type { DaysRecord } from "../../engine/index.ts";
import { countedDays, type WeekResponse } from "./weekResponse.ts";

const CUT_SHORT = "cutShort.";
const FULL = "cutShortFull.";

/** Whether a week was cut short since people of a crew were missing, for each that may lack some, or since a chiller was full over a night. */
export function cutShortResponses(plan: Plan): WeekResponse[] {
  return [...crewsThatMayLack(plan).map(lacking), ...overnightStages(plan).map(full)];
}

function lacking(name: string): WeekResponse {
  return {
    key: `${CUT_SHORT}${name}`,
    label: `Weeks cut short: too few of ${name} came, and what waited for them was never done`,
    unit: "share of weeks",
    format: "share",
    better: "less",
    needs: [],
    of: (_, record) => (lacked(record, name) ? 1 : 0),
  };
}

function full(name: string): WeekResponse {
  return {
    ...{
      key: `${FULL}${name}`,
      label: `Weeks cut short: ${name} was full, and nobody took anything out of it any more that day`,
    },
    ...{ unit: "share of weeks", format: "share", better: "less", needs: [] },
    of: (_, { status, days }) => (status !== "finished" && isFull(days.at(-1)!, name) ? 1 : 0),
  };
}

/** What is in it stays until tomorrow, and others wait for its places. */
function isFull({ left }: DaysRecord["days"][number], name: string): boolean {
  return (
    left.some(({ stage, reason }) => stage === name && reason === "tomorrow") &&
    left.some(({ reason }) => reason === "the next stage")
  );
}

function overnightStages(plan: Plan): string[] {
  return [
    ...new Set(countedDays(plan).flatMap(({ plan: { day } }) => (day.overnight ?? []).map(({ stage }) => stage))),
  ];
}

/** Kept of every study of weeks, so that a week cut short is never told without its reason. */
export function cutShortKeys(plan: Plan): string[] {
  return plan.week === undefined
    ? []
    : [
        ...crewsThatMayLack(plan).map((name) => `${CUT_SHORT}${name}`),
        ...overnightStages(plan).map((name) => `${FULL}${name}`),
      ];
}

function crewsThatMayLack(plan: Plan): string[] {
  const days = countedDays(plan).map((day) => day.plan);
  const mayLack = ({ absentShare, cover }: Crew) => absentShare > 0 || cover !== undefined;
  return [...new Set(days.flatMap(({ crews }) => crews.filter(mayLack).map(({ name }) => name)))];
}

/** The day that did not end waits for people of the crew, and no shift had more of them to send. */
function lacked({ status, days }: DaysRecord, crew: string): boolean {
  if (status === "finished") return false;
  const { left, crews } = days.at(-1)!;
  const isEmpty = Math.max(...crews.find(({ name }) => name === crew)!.people) === 0;
  return left.some(({ reason, of }) => {
    if (!of.includes(crew)) return false;
    return reason === "people" || reason === "more people" || (reason === "a repair" && isEmpty);
  });
}
