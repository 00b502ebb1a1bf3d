import { EventEmitter } from "node:events";
import { describe, expect, it } from "vitest";
import { Stopped } from "../../../sim/cli/badInput.ts";
import { interruption, untilInterrupted } from "../../../sim/cli/untilInterrupted.ts";

describe.each(["SIGHUP", "SIGINT", "SIGTERM"] as const)("%s", (name) => {
  it("is told to the work, as Stopped with its name", async () => {
    const events = new EventEmitter();
    const work = untilInterrupted(events, async (signal) => {
      events.emit(name);
      signal.throwIfAborted();
    });
    await expect(work).rejects.toSatisfy((error) => error instanceof Stopped && error.signal === name);
  });

  it("is listened for no longer than the work takes, and only once", async () => {
    const events = new EventEmitter();
    await untilInterrupted(events, async () => {
      expect(events.listenerCount(name)).toBe(1);
      events.emit(name);
      expect(events.listenerCount(name)).toBe(0);
    });
    expect(events.listenerCount(name)).toBe(0);
  });

  it("is waited for, and not for ever when it came before the waiting", async () => {
    const events = new EventEmitter();
    await untilInterrupted(events, async (signal) => {
      const waiting = interruption(signal);
      events.emit(name);
      await waiting;
      await interruption(signal);
      expect(signal.aborted).toBe(true);
    });
  });
});
