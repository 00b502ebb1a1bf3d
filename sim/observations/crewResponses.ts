import type { DayRecord } from "../engine/index.ts";
import { CARCASS } from "../line/index.ts";
import type { Plan } from "../plan/index.ts";
import type { Response } from "./response.ts";

/** How busy each crew is, and what one hour of a person on duty yields. */
export function crewResponses(plan: Plan): Response[] {
  if (plan.crews.length === 0) return [];
  return [...plan.crews.map(({ name }) => occupation(name)), carcassesPerPersonHour()];
}

/** How a crew's work in hand follows from what its stations did. */
export const WORK_IN_HAND =
  "Work in hand, in person-time: working position-time of its stations (by the clock) x people per position, walking included; waiting out a repair with a head in hand; repairs; emptying vessels.";

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

function carcassesPerPersonHour(): Response {
  return {
    key: "carcassesPerPersonHour",
    label: "Carcasses per person-hour on duty",
    unit: "carcasses/h",
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
