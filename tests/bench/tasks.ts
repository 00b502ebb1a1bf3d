import process from "node:process";
import { advance, type DayOptions, recordOf, runDay, startDay } from "../../sim/day/engine/index.ts";
import { type CompiledLine, compileLine } from "../../sim/day/line/index.ts";
import { scaledPlan } from "./plans.ts";
import { priorityQueueLine } from "./reference/priorityQueueLine.ts";
import { PLACES, serialLine } from "./serialLine.ts";

/** What a process of its own is asked to do, `rounds` times. */
export type Task = { rounds: number } & (
  | { kind: "priority queue"; stations: number; heads: number }
  /** `by` "events": the general loop even where the engine knows a shorter way. */
  | { kind: "serial line"; by: "engine" | "events"; stations: number; heads: number; options?: Partial<DayOptions> }
  | { kind: "plan"; file: string; heads: number; options?: Partial<DayOptions> }
);

export interface Measured {
  /** CPU milliseconds of each round, threads of the runtime included: the first one is cold. */
  milliseconds: number[];
  events: number;
  heads: number;
  /** Carcasses a second of model time, to see that all simulate the same. */
  headsPerSecond: number;
  /** Greatest memory of the whole process, megabytes. */
  peakMegabytes: number;
}

type Outcome = Pick<Measured, "events" | "heads" | "headsPerSecond">;

export function measured(task: Task): Measured {
  const run = runner(task);
  const milliseconds: number[] = [];
  let outcome: Outcome | null = null;
  for (let round = 0; round < task.rounds; round++) {
    const before = process.cpuUsage();
    outcome = run(round);
    const { user, system } = process.cpuUsage(before);
    milliseconds.push((user + system) / 1e3);
  }
  return { milliseconds, ...outcome!, peakMegabytes: process.resourceUsage().maxRSS / 1024 };
}

function runner(task: Task): (round: number) => Outcome {
  if (task.kind === "priority queue") {
    return () => ({ ...priorityQueueLine(task.stations, PLACES, task.heads), heads: task.heads });
  }
  const line = compileLine(
    task.kind === "plan" ? scaledPlan(task.file, task.heads) : serialLine(task.stations, task.heads),
  );
  const run = task.kind === "serial line" && task.by === "events" ? runEvents : runDay;
  return (replication) => {
    const day = run(line, { seed: "bench", replication, ...task.options });
    const heads = day.heads.out.carcass!;
    return { events: day.events, heads, headsPerSecond: heads / (day.finishSeconds - day.watchedFromSeconds) };
  };
}

function runEvents(line: CompiledLine, options: DayOptions) {
  const day = startDay(line, options);
  const status = advance(day, line.ceilingSeconds);
  return recordOf(day, status === "running" ? "ceiling" : status);
}
