/** Days simulated by workers on other machines, over Redis or Valkey. Needs Node. */

export { onQueue, type QueueOptions } from "./onQueue.ts";
export { type QueueWorker, startQueueWorker, type WorkerOptions } from "./startQueueWorker.ts";
