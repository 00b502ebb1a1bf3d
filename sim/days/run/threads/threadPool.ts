import { Piscina } from "piscina";

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

/**
 * Arguments of the runtime for threads of this process: its own, and where the project runs from its TypeScript sources
 * also one that makes each thread read them. (A transpiler that this process was started with reaches its threads in
 * every release of the runtime only as far as the older module format goes, in which calls from module to module take
 * twice the time.)
 */
export function threadArguments(): string[] {
  return import.meta.url.endsWith(".ts") ? [...process.execArgv, "--import", readsTypeScript()] : process.execArgv;
}

function readsTypeScript(): string {
  const program = `import { register } from ${JSON.stringify(import.meta.resolve("tsx/esm/api"))}; register();`;
  return `data:text/javascript,${encodeURIComponent(program)}`;
}
