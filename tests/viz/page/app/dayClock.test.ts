import { describe, expect, it } from "vitest";
import { DayClock } from "../../../../viz/page/app/dayClock.ts";

/** A clock whose frames come when the test says so. */
function clockWithFrames() {
  let waiting: ((milliseconds: number) => void) | null = null;
  const clock = new DayClock((call) => {
    waiting = call;
  });
  const frame = (milliseconds: number) => {
    const call = waiting;
    waiting = null;
    call?.(milliseconds);
  };
  return { clock, frame, isWaiting: () => waiting !== null };
}

describe("DayClock", () => {
  it("goes on by its speed from frame to frame, and stops at the end of the day", () => {
    const { clock, frame, isWaiting } = clockWithFrames();
    clock.setEnd(100);
    clock.speed.value = 500;
    clock.play();
    frame(1000);
    frame(1020);
    expect(clock.seconds).toBeCloseTo(10, 9);
    frame(1070);
    expect(clock.seconds).toBeCloseTo(35, 9);
    // A frame that was long in coming counts a tenth of a second.
    frame(9000);
    expect(clock.seconds).toBeCloseTo(85, 9);
    frame(9100);
    expect([clock.seconds, clock.playing.value, isWaiting()]).toEqual([100, false, false]);
  });

  it("begins anew when it is played at the end, and stands while it is paused", () => {
    const { clock, frame } = clockWithFrames();
    clock.setEnd(100);
    clock.moveTo(100);
    clock.play();
    frame(0);
    frame(10);
    expect(clock.seconds).toBeCloseTo(1, 9);
    clock.pause();
    frame(50);
    expect(clock.seconds).toBeCloseTo(1, 9);
  });

  it("stays within the day and tells everybody who watches", () => {
    const { clock } = clockWithFrames();
    const seen: number[] = [];
    const stop = clock.watch((seconds) => seen.push(seconds));
    clock.setEnd(50);
    clock.moveTo(80);
    clock.moveTo(-3);
    clock.setEnd(20);
    stop();
    clock.moveTo(7);
    expect(seen).toEqual([0, 0, 50, 0, 0]);
  });
});
