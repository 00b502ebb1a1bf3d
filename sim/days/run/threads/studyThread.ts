import { workerData } from "node:worker_threads";
import type { Batch, BatchResult, DaySource } from "../index.ts";
import { StopFlag } from "./stopFlag.ts";

/** What a thread is given once, at its start. */
export interface StudyThreadData {
  source: DaySource;
  stop: SharedArrayBuffer;
}

const { source, stop } = workerData as StudyThreadData;
// Awaited, so that the pool cannot load this program and all it imports in the older module format, which it tries
// first: run from TypeScript, calls from module to module then cost twice the time.
const { DaySimulator } = await import("../index.ts");
const simulator = new DaySimulator(source);
const flag = new StopFlag(stop);

/** The program of a worker thread: simulates one batch after another, up to the day at which the flag is raised. */
export default function simulate(batch: Batch): BatchResult {
  return simulator.simulateBatch(batch, () => flag.raised);
}
