import { describe, expect, it } from "vitest";
import { compileLine, NO_LIMIT } from "../../../../sim/day/line/index.ts";
import { handling, load } from "../../../support/loads.ts";
import { constant, crateStep, planOf, saturated, station, stream } from "../../../support/plans.ts";

describe("compileSupply", () => {
  const toHanging = [crateStep("unloading", 1), crateStep("sorting", 1), crateStep("feeding", 1)];
  const supplyOf = (back: boolean) => {
    const plan = planOf({ kind: "loads", loads: [load("lorry", 5, 3, 2)] }, [station("hanging", 1)], {
      liveHandling: back
        ? handling(toHanging, [crateStep("washer", 1)], { cratesAtHanging: 2, fleet: { crates: 9, awaySeconds: 60 } })
        : handling(toHanging),
    });
    return compileLine(plan).supply;
  };

  it("knows where crates leave the lorry, where they wait, and where the way back begins", () => {
    expect(supplyOf(true)).toMatchObject({
      kind: "loads",
      unloading: 0,
      feeding: 2,
      firstBack: 3,
      cratesAtHanging: 2,
      fleet: 9,
      awaySeconds: 60,
      loads: [{ name: "lorry", seconds: 5, crates: 3, headsPerCrate: 2 }],
    });
  });

  it("without a way back has no first stage of it, and crates without number", () => {
    expect(supplyOf(false)).toMatchObject({ firstBack: -1, fleet: NO_LIMIT });
  });

  it("keeps single heads and the endless supply as they are", () => {
    const line = [station("a", 1)];
    expect(compileLine(planOf(saturated(7), line)).supply).toMatchObject({ kind: "saturated", heads: 7 });
    expect(compileLine(planOf(stream(constant(3), 4, "turn away"), line)).supply).toMatchObject({
      kind: "stream",
      heads: 4,
      turnAway: true,
    });
  });
});
