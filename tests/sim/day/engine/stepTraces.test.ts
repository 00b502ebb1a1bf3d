import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { StateRecorder } from "../../../../sim/day/engine/stateTraces.ts";
import { BinnedRecorder, ExactRecorder, MAX_BINS } from "../../../../sim/day/engine/stepTraces.ts";
import { relativeError } from "../../../support/relativeError.ts";

const steps = fc.array(
  fc.record({
    gap: fc.integer({ min: 0, max: 900_000 }).map((milliseconds) => milliseconds / 1000),
    value: fc.integer({ min: 0, max: 60 }),
  }),
  { minLength: 1, maxLength: 300 },
);

describe("ExactRecorder", () => {
  it("keeps every step, drops values held for no time and steps that change nothing", () => {
    const recorder = new ExactRecorder();
    recorder.set(0, 1);
    recorder.set(5, 2);
    recorder.set(5, 3);
    recorder.set(9, 3);
    const trace = recorder.trace("q", 12);
    expect(trace).toEqual({ kind: "exact", name: "q", endSeconds: 12, times: [0, 5], values: [1, 3] });
  });
});

describe("BinnedRecorder", () => {
  it("keeps the area under the trace and every extreme, in at most 1024 bins, whatever the length", () => {
    fc.assert(
      fc.property(steps, (changes) => {
        const recorder = new BinnedRecorder();
        let now = 0;
        let value = 0;
        let area = 0;
        const held: number[] = [];
        for (const change of changes) {
          area += value * change.gap;
          if (change.gap > 0) held.push(value);
          now += change.gap;
          value = change.value;
          recorder.set(now, value);
        }
        area += value * 10;
        held.push(value);
        const end = now + 10;
        const trace = recorder.trace("q", end);
        if (trace.kind !== "binned") throw new Error("a binned recorder gives a binned trace");
        expect(trace.mean.length).toBeLessThanOrEqual(MAX_BINS);
        const covered = (bin: number) => Math.min(end, (bin + 1) * trace.binSeconds) - bin * trace.binSeconds;
        const found = trace.mean.reduce((sum, mean, bin) => sum + mean * covered(bin), 0);
        expect(relativeError(found, area)).toBeLessThan(1e-9);
        expect(Math.max(...trace.high)).toBe(Math.max(...held));
        expect(Math.min(...trace.low)).toBe(Math.min(...held));
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  it("keeps a peak of one second in a day of twenty hours", () => {
    const recorder = new BinnedRecorder();
    recorder.set(30_000, 17);
    recorder.set(30_001, 0);
    const trace = recorder.trace("q", 72_000);
    expect(trace.kind === "binned" && Math.max(...trace.high)).toBe(17);
  });
});

describe("StateRecorder", () => {
  it("keeps the seconds in every state when bins are merged, also when they are booked late", () => {
    const recorder = new StateRecorder();
    recorder.add(0, 0, 700.5);
    recorder.add(1, 700.5, 5000);
    recorder.add(3, 100, 200, 2);
    const trace = recorder.trace("skinning", 5000);
    const total = (state: number) =>
      trace.seconds.reduce((sum, seconds, cell) => sum + (cell % 6 === state ? seconds : 0), 0);
    expect(trace.seconds.length / 6).toBeLessThanOrEqual(MAX_BINS);
    expect([0, 1, 2, 3].map((state) => Math.round(total(state) * 1e6) / 1e6)).toEqual([700.5, 4299.5, 0, 200]);
  });
});
