import { describe, expect, it } from "vitest";
import { handling, load } from "../../../support/loads.ts";
import { crateStep, planOf, station } from "../../../support/plans.ts";
import { passes, runChecked } from "../../../support/timeline.ts";

// Crates of one head, unloaded and fed in no time: heads are there when their lorry is.
const liveHandling = handling([crateStep("unloading", 0), crateStep("feeding", 0)], [], { cratesAtHanging: 99 });

function day(lots: (string | null)[], positions = 1) {
  const loads = lots.map((lot, row) => load(`lorry ${row + 1}`, row, 2, 1, lot === null ? {} : { lot }));
  const line = [station("hanging", 10, { positions, changeoverSeconds: 30 })];
  return runChecked(planOf({ kind: "loads", loads }, line, { liveHandling }));
}

describe("a changeover between lots", () => {
  it("is made before the first head of another lot, and counts as work of the station", () => {
    // Two heads of the first lot until 20; 30 s and 10 s for the first of the second lot, 10 s for the other.
    const record = day([null, null]);
    expect(passes(record, "hanging", "end")).toEqual([10, 20, 60, 70]);
    expect(record.stages.find(({ name }) => name === "hanging")).toMatchObject({ changeovers: 1 });
  });

  it("is not made between loads of one lot", () => {
    expect(passes(day(["farm A", "farm A", "farm B"]), "hanging", "end")).toEqual([10, 20, 30, 40, 80, 90]);
  });

  it("is made by each position when its own next head is of another lot", () => {
    // Heads 1 and 2 side by side until 10; each position changes over and ends its next head at 50.
    expect(passes(day([null, null], 2), "hanging", "end")).toEqual([10, 10, 50, 50]);
  });
});
