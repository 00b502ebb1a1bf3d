import { describe, expect, it } from "vitest";
import { measure } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(wholeDay(), WHOLE_PLAN);

describe("oeeResponses", () => {
  it("reads a machine of two positions: 2 x 28,800 s less 3600 s on break, 40 s planned for each of 980 heads", () => {
    expect(values["availability.skinning"]).toBeCloseTo(44_100 / 54_000, 12);
    expect(values["effectiveness.skinning"]).toBeCloseTo(39_200 / 44_100, 12);
    // 49 of them were sent to trim.
    expect(values["qualityRatio.skinning"]).toBeCloseTo(0.95, 12);
    expect(values["oee.skinning"]).toBeCloseTo((40 * 931) / 54_000, 12);
  });

  it("counts heads that left a chain's window unfinished as produced but not good", () => {
    expect(values["qualityRatio.abdomen opening"]).toBeCloseTo(0.95, 12);
  });

  it("speaks of machines and of single positions, not of hand work side by side", () => {
    const stations = Object.keys(values)
      .filter((key) => key.startsWith("oee."))
      .map((key) => key.slice(4));
    expect(stations).toEqual(["stunning", "skinning", "abdomen opening"]);
  });
});
