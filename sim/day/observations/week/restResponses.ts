import type { Plan } from "../../../asked/plan/index.ts";
import { cleaningEndSeconds } from "../workingTime.ts";
import { countedDays, countedRecords, type WeekResponse } from "./weekResponse.ts";

/**
 * The shortest time from the end of a day's work, cleaning included, to the start of the next day's first shift: what whoever
 * works on both has to rest. A figure of the plan; what is due is for the law and the agreements at the site.
 */
export function restResponses(plan: Plan): WeekResponse[] {
  const days = countedDays(plan);
  if (days.length < 2) return [];
  return [
    {
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
    },
  ];
}
