import type { Plan } from "../../asked/plan/index.ts";
import type { CrewRecord, DayRecord } from "../engine/index.ts";
import { CARCASS, steps, workplace } from "../line/index.ts";
import type { Response } from "./response.ts";

/** How busy each crew is, and what one hour of a person on duty yields. */
export function crewResponses(plan: Plan): Response[] {
  if (plan.crews.length === 0) return [];
  return [...plan.crews.map(({ name }) => occupation(name)), carcassesPerPersonHour()];
}

/** How a crew's work in hand follows from what its stations did. */
export const WORK_IN_HAND =
  "Work in hand counts person-hours: the time that a crew's stations work, by the clock, times the people at a position, walking included; waits for a repair with a head in hand; repairs; emptying vessels.";

function occupation(crew: string): Response {
  return {
    key: `crew.${crew}.occupation`,
    label: `${crew}: with work in hand, share of time on duty`,
    meaning: WORK_IN_HAND,
    unit: "share of time on duty",
    format: "share",
    better: null,
    of: ({ crews }) => {
      const record = crews.find(({ name }) => name === crew);
      return record === undefined || record.presentSeconds === 0 ? null : record.busySeconds / record.presentSeconds;
    },
  };
}

/** Person-hours of each crew with work in hand, by station, and at repairs and emptyings. */
export function crewWorkResponses(plan: Plan): Response[] {
  const hours = (key: string, label: string, seconds: (crew: CrewRecord) => number, crew: string): Response => ({
    key,
    label,
    meaning: WORK_IN_HAND,
    unit: "person-hours",
    format: "number",
    better: null,
    of: ({ crews }) => {
      const record = crews.find(({ name }) => name === crew);
      return record === undefined ? null : seconds(record) / 3600;
    },
  });
  return plan.crews.flatMap(({ name }) => {
    const stations = stationsOf(plan, name).map((stage) => {
      const at = ({ work }: CrewRecord) => work.find((each) => each.stage === stage)?.seconds ?? 0;
      return hours(`crew.${name}.hours.${stage}`, `${name}: person-hours with work in hand at ${stage}`, at, name);
    });
    const jobs = `${name}: person-hours at repairs and emptying vessels`;
    return [...stations, hours(`crew.${name}.jobHours`, jobs, ({ jobSeconds }) => jobSeconds, name)];
  });
}

function stationsOf(plan: Plan, crew: string): string[] {
  return steps(plan).flatMap((step) => (workplace(step).crews.includes(crew) ? [step.name] : []));
}

function carcassesPerPersonHour(): Response {
  return {
    key: "carcassesPerPersonHour",
    label: "Carcasses per person-hour on duty",
    unit: "carcasses/person-hour",
    format: "number",
    better: "more",
    of: (day) => {
      const hours = personSeconds(day) / 3600;
      return hours > 0 ? (day.heads.out[CARCASS] ?? 0) / hours : null;
    },
  };
}

function personSeconds(day: DayRecord): number {
  return day.crews.reduce((sum, crew) => sum + crew.presentSeconds, 0);
}
