/** Days simulated in worker threads. Needs Node. */

export { inThreads } from "./inThreads.ts";
export { type LastingThreads, lastingThreads } from "./lastingThreads.ts";
export { type ThreadProgram, threadPool } from "./threadPool.ts";
