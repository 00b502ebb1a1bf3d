import { describe, expect, it } from "vitest";
import { requiredRate } from "../../../sim/size/requiredRate.ts";
import { sizeCrateSteps, sizeCrates } from "../../../sim/size/sizeCrates.ts";
import { sizeCrews } from "../../../sim/size/sizeCrews.ts";
import { demandOf } from "../../support/demands.ts";

const demand = demandOf({
  week: { heads: 22_000, days: 5 },
  crates: {
    headsPerCrate: 10,
    perLorry: 50,
    lead: "30 min",
    delay: "10 min",
    away: "2 h",
    washing: "30 s",
    restacking: "20 s",
  },
});

describe("sizeCrates", () => {
  it("brings the day's heads in equal loads, one as soon as the one before is hung", () => {
    const rate = requiredRate(demand);
    const { lorries, cratesPerLorry, perDay, everySeconds } = sizeCrates(demand, rate);
    expect([lorries, cratesPerLorry, perDay]).toEqual([9, 49, 441]);
    expect(everySeconds).toBeCloseTo(rate.hangingSeconds / 9, 9);
  });

  it("has places for a load and for what comes before the first head, and crates for those at the plant and away (Little 1961)", () => {
    const rate = requiredRate(demand);
    const perSecond = rate.headsPerSecond / 10;
    const { lairageCrates, fleet, everySeconds } = sizeCrates(demand, rate);
    expect(lairageCrates).toBe(Math.ceil(49 + perSecond * 2400));
    expect(fleet).toBe(Math.min(441, Math.ceil(perSecond * (2400 + everySeconds + 50 + 7200)) + 49));
  });
});

describe("sizeCrateSteps and sizeCrews", () => {
  it("let a crew share its crate steps, as many people as the work takes", () => {
    const steps = sizeCrateSteps(demand, 0.2);
    expect(steps.find(({ name }) => name === "washing")).toMatchObject({
      crew: "crate return",
      positions: 1,
      places: null,
    });
    const crew = sizeCrews(demand, steps).find(({ name }) => name === "crate return")!;
    expect(crew.people).toBe(Math.ceil((0.02 * 50) / 0.85));
    expect(crew.load * crew.people).toBeCloseTo(1, 9);
  });

  it("have somebody who repairs only where something breaks down", () => {
    expect(sizeCrews(demand, []).map(({ name }) => name)).toEqual(["maintenance"]);
    const steps = { skinning: { breakdowns: [] }, "four-leg cutting": { breakdowns: [] } };
    expect(sizeCrews(demandOf({ steps }), [])).toEqual([]);
  });
});
