import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { oee } from "../../../../sim/day/observations/index.ts";

describe("oee", () => {
  // Element names and formulas as quoted from ISO 22400-2:2014 by others; the figures are worked for this project.
  it("7.1 (ISO 22400-2:2014 as quoted; V-doc, figures worked here): a day of 480 minutes planned busy time", () => {
    const result = oee({
      plannedBusySeconds: 480 * 60,
      productionSeconds: 411 * 60,
      itemSeconds: 0.1 * 60,
      produced: 3720,
      good: 3646,
    });
    expect(result.availability).toBeCloseTo(0.85625, 6);
    expect(result.effectiveness).toBeCloseTo(0.905109, 6);
    expect(result.quality).toBeCloseTo(0.980108, 6);
    expect(result.oee).toBeCloseTo(0.759583, 6);
  });

  it("is the product of its three factors", () => {
    const positive = fc.double({ min: 1, max: 1e5, noNaN: true });
    const count = fc.integer({ min: 1, max: 10_000 });
    fc.assert(
      fc.property(
        positive,
        positive,
        positive,
        count,
        count,
        (plannedBusySeconds, productionSeconds, itemSeconds, produced, good) => {
          const result = oee({ plannedBusySeconds, productionSeconds, itemSeconds, produced, good });
          const product = result.availability! * result.effectiveness! * result.quality!;
          expect(product / result.oee!).toBeCloseTo(1, 12);
        },
      ),
      { seed: 22_400, numRuns: 200 },
    );
  });

  it("has no factor where there is nothing to divide by", () => {
    expect(oee({ plannedBusySeconds: 0, productionSeconds: 0, itemSeconds: 5, produced: 0, good: 0 })).toEqual({
      availability: null,
      effectiveness: null,
      quality: null,
      oee: null,
    });
  });
});
