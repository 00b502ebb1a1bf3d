import type { Plan } from "../../../asked/plan/index.ts";
import { paidTime } from "../labour.ts";
import { cleaningEndSeconds } from "../workingTime.ts";
import { countedDays, countedRecords, type WeekResponse } from "./weekResponse.ts";

/**
 * Hours and rest of people over the week. Rest is the shortest time from the end of a day's work, cleaning included, to the start of the next day's first shift: what whoever
 * works on both has to rest. A figure of the plan; what is due is for the law and the agreements at the site.
 */
export function restResponses(plan: Plan): WeekResponse[] {
  const days = countedDays(plan);
  return [
    ...plan.crews.map((crew, row) => hoursOf(plan, crew.name, row)),
    ...(days.length < 2 ? [] : [shortestRest(plan, days)]),
  ];
}

/** What one person of the crew is paid for over the week: shifts, breaks included, and overtime. */
function hoursOf(plan: Plan, name: string, row: number): WeekResponse {
  const days = countedDays(plan);
  return {
    ...{ key: `hours.${name}`, label: `Week: ${name}: paid hours of a person who comes every day`, unit: "h" },
    ...{ format: "number", better: "less", needs: [] },
    meaning: "Whoever works in one of several shifts of the crew alone has fewer: the plan does not name people.",
    of: (_, record) => {
      const hours = countedRecords(plan, record).map((day, index) => {
        const own = days[index]!.plan;
        const people = Math.max(0, ...day.crews[row]!.people);
        const { regularSeconds, overtimeSeconds } = paidTime(own.crews[row]!, day, own);
        return people === 0 ? 0 : (regularSeconds + overtimeSeconds) / people / 3600;
      });
      return hours.length < days.length ? null : hours.reduce((sum, each) => sum + each, 0);
    },
  };
}

function shortestRest(plan: Plan, days: ReturnType<typeof countedDays>): WeekResponse {
  return {
    ...{
      key: "rest.shortest",
      label: "Shortest time from the end of a day's work to the next day's start",
      unit: "s",
    },
    ...{ format: "duration", better: "more", needs: [] },
    of: (_, record) => {
      const ends = countedRecords(plan, record).map((day, row) => {
        const end = cleaningEndSeconds(day, days[row]!.plan) ?? day.workFinishSeconds;
        return days[row]!.startSeconds + Math.max(end, day.shiftEndSeconds);
      });
      const starts = days.map(({ startSeconds, plan }) => startSeconds + (plan.day.shifts[0]?.fromSeconds ?? 0));
      const rests = ends.slice(0, -1).map((end, row) => starts[row + 1]! - end);
      return rests.length === 0 ? null : Math.min(...rests);
    },
  };
}
