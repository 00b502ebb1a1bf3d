/** Days simulated in worker threads. Needs Node. */

export { inThreads } from "./inThreads.ts";
export { type ThreadProgram, threadPool } from "./threadPool.ts";
