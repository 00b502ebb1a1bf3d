import { EventEmitter } from "node:events";
import { expect, it } from "vitest";
import { Stopped, untilInterrupted } from "../../../sim/cli/untilInterrupted.ts";

it("tells the work of an interrupt, as Stopped", async () => {
  const events = new EventEmitter();
  const work = untilInterrupted(events, async (signal) => {
    events.emit("SIGINT");
    signal.throwIfAborted();
  });
  await expect(work).rejects.toBeInstanceOf(Stopped);
});

it("listens no longer than the work takes, and only to the first interrupt", async () => {
  const events = new EventEmitter();
  await untilInterrupted(events, async () => {
    expect(events.listenerCount("SIGINT")).toBe(1);
    events.emit("SIGINT");
    expect(events.listenerCount("SIGINT")).toBe(0);
  });
  expect(events.listenerCount("SIGINT")).toBe(0);
});
