import { availableParallelism } from "node:os";
import { Piscina } from "piscina";
import { afterAll } from "vitest";
import { built } from "./builtProgram.ts";

export const THREADS = availableParallelism();

/**
 * Worker threads that run a program of this folder, named without its ending, until the test file ends, one task each at
 * a time. They stay: to start one takes longer than most checks.
 */
export function stayingThreads<Task, Result>(program: string): Piscina<Task, Result> {
  const pool = new Piscina<Task, Result>({
    filename: built(`tests/support/${program}.js`),
    minThreads: THREADS,
    maxThreads: THREADS,
    concurrentTasksPerWorker: 1,
  });
  afterAll(() => pool.destroy());
  return pool;
}
