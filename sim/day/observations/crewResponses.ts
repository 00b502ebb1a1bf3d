import { type Crew, type Plan, stopsOf } from "../../asked/plan/index.ts";
import type { CrewRecord, DayRecord } from "../engine/index.ts";
import { CARCASS, steps, workplace } from "../line/index.ts";
import type { Response } from "./response.ts";

/** How busy each crew is, and what one hour of a person on duty yields. */
export function crewResponses(plan: Plan): Response[] {
  if (plan.crews.length === 0) return [];
  const rotating = plan.crews.filter(({ rotates }) => rotates).flatMap((crew) => atOneTask(plan, crew));
  return [...plan.crews.map(({ name }) => occupation(name)), ...rotating, carcassesPerPersonHour()];
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

const AT_ONE_TASK =
  "By the plan: from the start of the shift, a break or a change of places to the next of them, or to the end of work. A head in hand is finished after that. The sum shares a person's hours on duty out equally among the crew's places.";

/** How long somebody of a crew that changes places does one task: without a change, and in all. */
function atOneTask({ day: { shifts, breaks } }: Plan, crew: Crew): Response[] {
  const stops = stopsOf(breaks, crew);
  const hours = (key: string, label: string, of: (day: DayRecord, record: CrewRecord) => number | null): Response => ({
    ...{ key: `crew.${crew.name}.${key}`, label: `${crew.name}: ${label}`, meaning: AT_ONE_TASK, unit: "s" },
    ...{ format: "duration", better: "less" },
    of: (day) => {
      const record = day.crews.find(({ name }) => name === crew.name);
      return record === undefined ? null : of(day, record);
    },
  });
  return [
    hours("longestTask", "longest time at one task", (day) => longestStretch(shifts, stops, day.workFinishSeconds)),
    hours("taskSum", "time of one person at one task, sum of the day", (_, { people, presentSeconds, work }) => {
      const most = Math.max(...people);
      return most === 0 ? null : presentSeconds / most / work.length;
    }),
  ];
}

/** Seconds; the last shift goes on to the end of work. */
function longestStretch(shifts: Plan["day"]["shifts"], stops: ReturnType<typeof stopsOf>, workEnds: number): number {
  return Math.max(
    ...shifts.map(({ fromSeconds, toSeconds }, row) => {
      const end = row === shifts.length - 1 ? workEnds : Math.min(toSeconds, workEnds);
      const inside = stops.filter((stop) => stop.fromSeconds >= fromSeconds && stop.fromSeconds < end);
      const begins = [fromSeconds, ...inside.map((stop) => stop.toSeconds)];
      const ends = [...inside.map((stop) => stop.fromSeconds), end];
      return Math.max(...begins.map((begin, index) => ends[index]! - begin));
    }),
  );
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
