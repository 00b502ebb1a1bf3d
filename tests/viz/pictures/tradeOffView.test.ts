import { describe, expect, it } from "vitest";
import { tradeOffView } from "../../../viz/pictures/index.ts";
import { inventedImprovement } from "../../support/invented.ts";

describe("tradeOffView", () => {
  it("sets what a total gives, with its interval, against the total; names what takes more for less or breaks a limit", () => {
    const view = tradeOffView(inventedImprovement())!;
    expect(view.points.map(({ name, cost, undominated }) => [name, cost.mean, undominated])).toEqual([
      ["2 people (beyond a limit)", 2, true],
      ["4 people", 4, true],
      ["as it is", 5, false],
    ]);
    expect(view.points[1]!.gain).toEqual({ mean: 330, low: 328, high: 332 });
    expect([view.cost, view.gain]).toEqual([
      { kind: "number", label: "People", unit: "" },
      { kind: "number", label: "Throughput", unit: "carcasses/h" },
    ]);
    expect(view.caption).toMatch(/^Right and down is better/);
  });

  it("is null without a curve, and leaves out what cannot be counted", () => {
    expect(tradeOffView(inventedImprovement({ curve: [] }))).toBeNull();
    const { curve } = inventedImprovement();
    const [first, ...rest] = curve;
    expect(tradeOffView(inventedImprovement({ curve: [{ ...first!, uses: null }, ...rest] }))!.points).toHaveLength(2);
  });
});
