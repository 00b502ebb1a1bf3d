import type { EventEmitter } from "node:events";

/** Thrown between two days after Ctrl-C. */
export class Stopped extends Error {
  constructor() {
    super("Stopped. Nothing was written.");
    this.name = "Stopped";
  }
}

/**
 * Runs work that Ctrl-C stops at the next opportunity, so that it can leave the disk as it was. A second Ctrl-C ends
 * the program at once.
 */
export async function untilInterrupted<Result>(
  events: EventEmitter,
  work: (signal: AbortSignal) => Promise<Result>,
): Promise<Result> {
  const controller = new AbortController();
  const stop = (): void => controller.abort(new Stopped());
  events.once("SIGINT", stop);
  try {
    return await work(controller.signal);
  } finally {
    events.off("SIGINT", stop);
  }
}
