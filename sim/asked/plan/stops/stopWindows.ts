import type { Plan } from "../plan.ts";

/** Half-open, seconds after the day's start. */
export interface Window {
  from: number;
  to: number;
}

/** Who can stop: a crew or a stage, by its name. The two are kept apart. */
export interface Stoppers {
  crews: Map<string, Window[]>;
  stages: Map<string, Window[]>;
}

/** Breaks and pauses by who has them, in time order. */
export function plannedStops({ day, crews }: Plan): Stoppers {
  const { breaks } = day;
  const ofCrew = (name: string) =>
    breaks
      .filter((pause) => pause.crews.includes(name))
      .map((pause) => windowFrom(pause.atSeconds + (pause.laterSeconds[name] ?? 0), pause.lengthSeconds));
  const ofStage = (name: string) =>
    breaks
      .filter((pause) => pause.stages.includes(name))
      .map((pause) => windowFrom(pause.atSeconds, pause.lengthSeconds));
  const stages = [...new Set(breaks.flatMap((pause) => pause.stages))];
  return {
    crews: new Map(crews.map(({ name }) => [name, byTime(ofCrew(name))])),
    stages: new Map(stages.map((name) => [name, byTime(ofStage(name))])),
  };
}

/** When nobody of the crew is there by shift: before the first one that it has people in, between, never after the last. */
export function offDuty({ day }: Plan, people: readonly number[]): Window[] {
  const on = day.shifts.flatMap(({ fromSeconds, toSeconds }, shift) => {
    const from = fromSeconds + (shift === 0 ? day.preStartSeconds : 0);
    return people[shift]! > 0 ? [{ from, to: toSeconds }] : [];
  });
  return on
    .map(({ from }, row) => ({ from: row === 0 ? 0 : on[row - 1]!.to, to: from }))
    .filter(({ from, to }) => to > from);
}

function windowFrom(from: number, length: number): Window {
  return { from, to: from + length };
}

function byTime(windows: readonly Window[]): Window[] {
  return windows.toSorted((a, b) => a.from - b.from);
}
