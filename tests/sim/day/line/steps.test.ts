import { describe, expect, it } from "vitest";
import { steps, workplace } from "../../../../sim/day/line/index.ts";
import { handling, load } from "../../../support/loads.ts";
import { chain, crateStep, dwell, manual, onChain, planOf, saturated, station } from "../../../support/plans.ts";

describe("steps", () => {
  it("are crate steps out, crate steps back, then the line, with a chain's stations behind it", () => {
    const plan = planOf(
      { kind: "loads", loads: [load("lorry", 0, 1, 1)] },
      [station("hanging", 1), chain("c", 4, 1, [onChain("v", 0, 1, 1), onChain("w", 2, 1, 1)]), dwell("d", 1, 2)],
      { liveHandling: handling([crateStep("unloading", 1)], [crateStep("washer", 1)]) },
    );
    expect(steps(plan).map(({ kind, name }) => [kind, name])).toEqual([
      ["crates", "unloading"],
      ["crates", "washer"],
      ["station", "hanging"],
      ["chain", "c"],
      ["chain station", "v"],
      ["chain station", "w"],
      ["dwell", "d"],
    ]);
  });
});

describe("workplace", () => {
  it("of a dwell stage and of a chain is one position with nobody; of a station its own", () => {
    const plan = planOf(saturated(1), [
      manual("a", 1, "crew", { positions: 3 }),
      chain("c", 4, 1, []),
      dwell("d", 1, 9),
    ]);
    const places = steps(plan).map(workplace);
    expect(places.map(({ positions, crews }) => [positions, crews])).toEqual([
      [3, ["crew"]],
      [1, []],
      [1, []],
    ]);
  });
});
