import type { EventEmitter } from "node:events";
import { SIGNALS, Stopped } from "./badInput.ts";

/**
 * Runs work that Ctrl-C (or SIGTERM, or SIGHUP when the terminal is closed) stops at the next opportunity, so that it
 * can leave the disk in order. A second Ctrl-C ends the program at once. What asks for Ctrl-C is said inside `work`:
 * before, nobody would be listening yet.
 */
export async function untilInterrupted<Result>(
  events: EventEmitter,
  work: (signal: AbortSignal) => Promise<Result>,
): Promise<Result> {
  const controller = new AbortController();
  const stops = SIGNALS.map((name) => ({ name, stop: () => controller.abort(new Stopped(name)) }));
  for (const { name, stop } of stops) events.once(name, stop);
  try {
    return await work(controller.signal);
  } finally {
    for (const { name, stop } of stops) events.off(name, stop);
  }
}

/** Waits for the signal; also done when it came before anybody waited. */
export async function interruption(signal: AbortSignal): Promise<void> {
  if (signal.aborted) return;
  await new Promise((resolve) => signal.addEventListener("abort", resolve, { once: true }));
}
