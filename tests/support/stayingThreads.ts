import { availableParallelism } from "node:os";
import { Piscina } from "piscina";
import { afterAll } from "vitest";
import { threadArguments } from "../../sim/days/run/threads/threadPool.ts";

export const THREADS = availableParallelism();

/**
 * Worker threads that run a program of this folder until the test file ends, one task each at a time. They stay: to start
 * one takes longer than most checks.
 */
export function stayingThreads<Task, Result>(program: string): Piscina<Task, Result> {
  const pool = new Piscina<Task, Result>({
    filename: new URL(program, import.meta.url).href,
    minThreads: THREADS,
    maxThreads: THREADS,
    concurrentTasksPerWorker: 1,
    execArgv: threadArguments(),
  });
  afterAll(() => pool.destroy());
  return pool;
}
