import { formatClock, SECONDS_PER_DAY } from "../../sim/text/units/index.ts";
import type { DayRecord, StudyResults } from "../contract.ts";
import { isolated } from "../frame/index.ts";

const MONTHS = ["Jan", "Feb", "March", "April", "May", "June", "July", "Aug", "Sept", "Oct", "Nov", "Dec"];

/** "day 1"; of a plan with a week "Monday of week 1": which draw a day is. */
export function whichDay({ plan }: StudyResults, { replication }: Pick<DayRecord, "replication">): string {
  if (plan.week === undefined) return `day ${replication + 1}`;
  const { days } = plan.week;
  return `${isolated(days[replication % days.length]!.name)} of week ${Math.floor(replication / days.length) + 1}`;
}

/** Shifts and breaks of a simulated day: the plan's, or those of its day of the week. */
export function hoursOf(
  { plan }: StudyResults,
  { replication }: Pick<DayRecord, "replication">,
): Pick<StudyResults["plan"], "shifts" | "breaks"> {
  return plan.week === undefined ? plan : plan.week.days[replication % plan.week.days.length]!;
}

/** "17 March" for a day of the calendar, counted from 0; "" where the plan names no date. */
export function dateWords(begins: string | null, day: number): string {
  if (begins === null) return "";
  const date = new Date(Date.parse(`${begins}T00:00:00Z`) + day * SECONDS_PER_DAY * 1000);
  return `${date.getUTCDate()} ${MONTHS[date.getUTCMonth()]!}`;
}

/** "Tuesday 16:39" for seconds after midnight of the first day; the hours go on into the night of a day that runs so long. */
export function weekClock(days: readonly { name: string }[], seconds: number): string {
  const day = Math.min(days.length - 1, Math.max(0, Math.floor(seconds / SECONDS_PER_DAY)));
  return `${isolated(days[day]!.name)} ${formatClock(seconds - day * SECONDS_PER_DAY)}`;
}
