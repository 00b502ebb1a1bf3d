import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Calendar } from "../../../../../sim/day/engine/state/calendar.ts";

/** The naive calendar: look at every slot; the lowest number wins a tie. */
function earliest(times: readonly number[]): number {
  return times.indexOf(Math.min(...times));
}

describe("Calendar", () => {
  it("names the same next slot as a look at every slot, after any sequence of changes", () => {
    const change = fc.record({
      slot: fc.nat({ max: 12 }),
      time: fc.oneof(fc.integer({ min: 0, max: 5 }), fc.constant(Infinity)),
    });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 13 }), fc.array(change, { maxLength: 200 }), (slots, changes) => {
        const calendar = new Calendar(slots);
        const naive = new Array<number>(slots).fill(Infinity);
        for (const { slot, time } of changes) {
          calendar.schedule(slot % slots, time);
          naive[slot % slots] = time;
          const next = calendar.next();
          expect(calendar.times[next]).toBe(Math.min(...naive));
          if (naive.some((pending) => pending < Infinity)) expect(next).toBe(earliest(naive));
        }
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it("has nothing pending at first", () => {
    const calendar = new Calendar(5);
    expect(calendar.times[calendar.next()]).toBe(Infinity);
  });

  it("takes the lower slot first at the same instant, whatever the order of scheduling", () => {
    const calendar = new Calendar(4);
    calendar.schedule(3, 7);
    calendar.schedule(1, 7);
    calendar.schedule(2, 7);
    expect(calendar.next()).toBe(1);
  });
});
