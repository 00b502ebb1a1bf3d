import { describe, expect, it } from "vitest";
import { constant, dwell, planOf, station, stream } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

// A head is ready for the chiller at 2, 3, 4, ... and hangs there for 10 s; four places.

function chiller(headsPerHook: number, heads = 8, places = 4) {
  const line = [station("in", 1, { buffer: Infinity }), dwell("chiller", 10, places, { headsPerHook })];
  return runChecked(planOf(stream(constant(1), heads), line));
}

describe("hooks", () => {
  it("of one head each are free again one by one", () => {
    expect(passes(chiller(1), "chiller", "entry")).toEqual([2, 3, 4, 5, 12, 13, 14, 15]);
  });

  it("of two are not refilled while one head still hangs there", () => {
    // Heads leave at 12, 13, 14, 15: the first hook is free at 13, not at 12, the second at 15. Head 5 goes in at 13, head
    // 6 (from 13 in the station before) at 14, head 7 at 15, head 8 at 16.
    expect(passes(chiller(2), "chiller", "entry")).toEqual([2, 3, 4, 5, 13, 14, 15, 16]);
  });

  it("of four are free when all four have left", () => {
    expect(passes(chiller(4), "chiller", "entry")).toEqual([2, 3, 4, 5, 15, 16, 17, 18]);
  });

  it("are filled one after another: a hook that is not full takes the next head, whoever has left it", () => {
    // One hook of two. A head every 20 s hangs alone and has left when the next comes.
    const line = [station("in", 1), dwell("chiller", 10, 2, { headsPerHook: 2 })];
    const day = runChecked(planOf(stream(constant(20), 4), line));
    expect(passes(day, "chiller", "entry")).toEqual([21, 41, 61, 81]);
  });

  it("count their places in heads", () => {
    const stage = chiller(2).stages.find(({ name }) => name === "chiller")!;
    expect(stage).toMatchObject({ places: 4, positions: 4 });
    expect(stage.queue.max).toBe(4);
    // Eight heads of 10 s; the day ends at 26. What is not taken is starved, half-empty hooks included.
    expect(stage.stateSeconds[0]).toBe(80);
    expect(stage.stateSeconds[2]).toBe(4 * 26 - 80);
  });
});
