import { workerData } from "node:worker_threads";
import type { Batch, BatchResult, DaySimulator, DaySource } from "../index.ts";
import { StopFlag } from "./stopFlag.ts";

/** What a thread is given with each task: the batch's variant is the only one of the source. */
export interface LastingTask {
  /** Number of the study, from 1 on. */
  study: number;
  variant: number;
  source: DaySource;
  batch: Batch;
}

// Awaited for the reason given in studyThread.ts.
const program = await import("../index.ts");
const flag = new StopFlag((workerData as { stop: SharedArrayBuffer }).stop);

/** Lines of one study that this thread compiled. */
const compiled = new Map<number, DaySimulator>();
let current = 0;

/** The program of a thread that outlives a study: simulates one batch after another, up to the day at which the flag is raised. */
export default function simulate({ study, variant, source, batch }: LastingTask): BatchResult {
  if (study !== current) compiled.clear();
  current = study;
  const simulator = compiled.get(variant) ?? new program.DaySimulator(source);
  compiled.set(variant, simulator);
  return simulator.simulateBatch(batch, () => flag.raised);
}
