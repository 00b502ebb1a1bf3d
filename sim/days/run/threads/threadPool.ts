import { Piscina } from "piscina";
import { threadArguments } from "./threadArguments.ts";

/** A thread's program, beside the module that names it. */
export interface ThreadProgram {
  /** `import.meta.url` of the module that names it. */
  beside: string;
  /** Without its ending. */
  name: string;
}

/**
 * At most so many worker threads that run a program's default export, each one task at a time; `workerData` is given to
 * each at its start.
 */
export function threadPool<Task, Result>(
  { beside, name }: ThreadProgram,
  threads: number,
  workerData?: unknown,
): Piscina<Task, Result> {
  return new Piscina<Task, Result>({
    // TypeScript where the project runs from its sources, JavaScript where it is built.
    filename: new URL(`./${name}${beside.endsWith(".ts") ? ".ts" : ".js"}`, beside).href,
    minThreads: 1,
    maxThreads: threads,
    concurrentTasksPerWorker: 1,
    execArgv: threadArguments(),
    ...(workerData === undefined ? {} : { workerData }),
  });
}
