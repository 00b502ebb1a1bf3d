import type { Break, Cleaning, Closing, DayPlan } from "../plan.ts";
import type { PlanFile } from "../schema/planFile.ts";

type FileDay = PlanFile["day"];

/** Seconds after midnight at which the simulated clock starts. */
export function dayStart(day: FileDay): number {
  return day.start ?? (day.shifts[0] as { from: number }).from;
}

export function toDay(day: FileDay, crews: PlanFile["crews"]): DayPlan {
  const start = dayStart(day);
  const everybody = crews.map(({ name }) => name);
  return {
    startClockSeconds: start,
    shifts: day.shifts.map(({ name, from, to }) => ({ name, fromSeconds: from - start, toSeconds: to - start })),
    breaks: day.breaks.map((pause) => toBreak(pause, everybody, start)),
    closing: toClosing(day.closing, start),
    preStartSeconds: day.preStart,
    cleaning: day.cleaning && toCleaning(day.cleaning, everybody),
    safeStop: day.safeStop,
    ceilingSeconds: day.ceiling,
  };
}

function toCleaning(
  { length, crews, sections }: NonNullable<FileDay["cleaning"]>,
  everybody: readonly string[],
): Cleaning {
  return {
    seconds: length ?? 0,
    crews: crews ?? [...everybody],
    ...(sections.length === 0
      ? {}
      : { sections: sections.map(({ section, length: seconds, people }) => ({ section, seconds, people })) }),
  };
}

function toBreak(pause: FileDay["breaks"][number], everybody: readonly string[], start: number): Break {
  return {
    name: pause.name,
    atSeconds: pause.at - start,
    lengthSeconds: pause.length,
    ends: pause.ends,
    crews: pause.crews ?? [...everybody],
    laterSeconds: pause.later,
    stages: pause.stages ?? [],
  };
}

function toClosing(closing: FileDay["closing"], start: number): Closing {
  if (closing.stopHangingAt === undefined) return { rule: "finish" };
  return { rule: "stop hanging", atSeconds: closing.stopHangingAt - start };
}
