import type { ICalEventData } from "ical-generator";
import { formatDecimals, SECONDS_PER_DAY } from "../../text/units/index.ts";
import type { StudyResults, WeekOutline } from "./studyResults.ts";
import { weekMoment } from "./weekTables.ts";

/**
 * Shifts, lorries and orders of the plan's week as a calendar file (iCalendar, RFC 5545), all in floating time: that of the
 * plant, wherever the calendar is opened. Days of the warm-up and all that is due on them are left out. Null where the plan has no week or does
 * not say when it begins. The same results give the same file, and names of events that a calendar takes for the same ones.
 */
export async function weekCalendar(results: StudyResults): Promise<string | null> {
  const week = results.plan.week;
  if (week === undefined || week.begins === null) return null;
  // Loaded only for a run that has a calendar.
  const { default: ical } = await import("ical-generator");
  const calendar = ical({
    // The library writes a calendar's name as it is given; the text of a property has these characters escaped (RFC 5545, 3.3.11).
    name: results.plan.name.replace(/[\\;,]/g, (sign) => `\\${sign}`).replace(/\s*\n\s*/g, "\\n"),
    prodId: { company: "gambrel", product: "week", language: "EN" },
  });
  // A run does not know when it is made: that would make two files of one run differ.
  const stamp = weekMoment(week, 0);
  const stem = (results.inputsSha256 ?? results.study.seed).slice(0, 32);
  const events = [...shiftEvents(results, week), ...lorryEvents(results, week), ...orderEvents(week)];
  for (const { kind, number, ...event } of events)
    calendar.createEvent({ ...event, id: `${stem}-${kind}-${number}@gambrel`, stamp, floating: true });
  return calendar.toString();
}

type WeekEvent = Pick<ICalEventData, "start" | "end" | "summary"> & { kind: string; number: number };

/** With the people of all crews that the shift has by plan in the first simulated week. */
function shiftEvents({ variants }: StudyResults, week: WeekOutline): WeekEvent[] {
  const records = variants[0]!.day.week?.days ?? [];
  const shifts = week.days.flatMap((day, index) => {
    if (!day.counted) return [];
    const record = records.find(({ replication }) => replication % week.days.length === index);
    return day.shifts.map((shift, place) => {
      const people = (record?.crews ?? []).reduce(
        (sum, crew) => sum + (crew.people[place] ?? 0) + (crew.absent[place] ?? 0),
        0,
      );
      return {
        start: weekMoment(week, day.startSeconds + shift.fromSeconds),
        end: weekMoment(week, day.startSeconds + shift.toSeconds),
        summary: `Shift: ${shift.name}${people > 0 ? `, ${people} people` : ""}`,
      };
    });
  });
  return shifts.map((shift, number) => ({ ...shift, kind: "shift", number: number + 1 }));
}

function lorryEvents({ variants }: StudyResults, week: WeekOutline): WeekEvent[] {
  const works = week.days.flatMap((day) => (day.works ? [day] : []));
  return (variants[0]!.day.week?.lots ?? []).flatMap(({ name, day, heads, dueSeconds }, index) => {
    if (works[day]?.counted !== true) return [];
    const summary = `Lorry due: ${name}, ${formatDecimals(heads, 0)} heads`;
    return [{ start: weekMoment(week, dueSeconds), summary, kind: "lorry", number: index + 1 }];
  });
}

function orderEvents(week: WeekOutline): WeekEvent[] {
  const from =
    Math.max(
      0,
      week.days.findIndex(({ counted }) => counted),
    ) * SECONDS_PER_DAY;
  return week.orders.flatMap(({ name, bySeconds, carcasses, kilograms }, index) => {
    if (bySeconds < from) return [];
    const wanted =
      carcasses === null ? `${formatDecimals(kilograms ?? 0, 0)} kg` : `${formatDecimals(carcasses, 0)} carcasses`;
    const summary = `Order due: ${name}, ${wanted}`;
    return [{ start: weekMoment(week, bySeconds), summary, kind: "order", number: index + 1 }];
  });
}
