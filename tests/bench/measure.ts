import { spawnSync } from "node:child_process";
import { join } from "node:path";
import process from "node:process";
import type { Measured, Task } from "./tasks.ts";

const PROBE = join(import.meta.dirname, "probe.js");

/** Runs the task in a process of its own. */
export function probe(task: Task): Measured {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROBE, JSON.stringify(task)], { encoding: "utf8" });
  if (status !== 0) throw new Error(`${JSON.stringify(task)}: ${stderr}`);
  return JSON.parse(stdout) as Measured;
}

/** The best of what several processes measured: disturbances only ever add time. */
export interface Best {
  milliseconds: number;
  coldMilliseconds: number;
  nanosecondsPerEvent: number;
  events: number;
  heads: number;
  headsPerSecond: number;
  peakMegabytes: number;
}

export function best(all: readonly Measured[]): Best {
  const { events, heads, headsPerSecond } = all[0]!;
  const milliseconds = Math.min(...all.flatMap((each) => each.milliseconds));
  return {
    milliseconds,
    coldMilliseconds: Math.min(...all.map((each) => each.milliseconds[0]!)),
    nanosecondsPerEvent: (milliseconds * 1e6) / events,
    events,
    heads,
    headsPerSecond,
    peakMegabytes: Math.min(...all.map((each) => each.peakMegabytes)),
  };
}

/** Measures each in turn, `times` times over, so that all meet the same disturbances of a busy machine. */
export function interleaved(times: number, measure: readonly (() => Measured)[]): Best[] {
  const all = measure.map((): Measured[] => []);
  for (let time = 0; time < times; time++) measure.forEach((one, index) => void all[index]!.push(one()));
  return all.map(best);
}
