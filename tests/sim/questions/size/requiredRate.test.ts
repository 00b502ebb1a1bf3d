import { describe, expect, it } from "vitest";
import { requiredRate } from "../../../../sim/questions/size/requiredRate.ts";
import { demandOf } from "../../../support/demands.ts";

/** A line of three steps, so that every second can be added up by hand. */
const OTHERS = [
  "hind-leg cutting",
  "pre-loosening",
  "skinning",
  "four-leg cutting",
  "abdomen opening",
  "evisceration",
  "inspection",
  "final trim",
  "chiller loading",
  "trim",
];
const SHORT = {
  ...Object.fromEntries(OTHERS.map((name) => [name, { leftOut: true }])),
  hanging: { cycle: "10 s", travel: null },
  stunning: { cycle: "4 s" },
  sticking: { cycle: "6 s", travel: null },
  bleeding: { dwell: "100 s", travel: null },
};
const PLAIN = { animals: { condemned: 0, deadOnArrival: 0 }, steps: SHORT, line: { availability: 1 } };

describe("requiredRate", () => {
  it("divides the busiest day's heads by the time in which they can be hung", () => {
    const day = {
      shifts: [{ name: "day", from: "06:00", to: "14:00" }],
      breaks: [{ name: "b", at: "10:00", length: "30 min" }],
      preStart: "10 min",
    };
    const rate = requiredRate(demandOf({ ...PLAIN, day, week: { heads: 20_000, days: 5, peak: 1.1 } }));
    expect(rate.headsPerDay).toBe(4400);
    // 8 h less checks, the break, the kill run empty before it, and the last head's way down the line.
    expect(rate.hangingSeconds).toBe(8 * 3600 - 600 - 1800 - 110 - 120);
    expect(rate.headsPerSecond).toBeCloseTo(4400 / rate.hangingSeconds, 12);
    expect(rate.taktSeconds).toBeCloseTo(rate.hangingSeconds / 4400, 12);
  });

  it("hangs more than come out, and faster than the average where the line does not always run", () => {
    const animals = { condemned: "1 %", deadOnArrival: "0.5 %", yield: "50 %", liveWeight: "3 kg" };
    const carcasses = requiredRate(demandOf({ ...PLAIN, animals, week: { carcasses: 9000, days: 3 } }));
    expect(carcasses.headsPerWeek).toBeCloseTo(9000 / 0.99 / 0.995, 6);
    const mass = requiredRate(demandOf({ ...PLAIN, animals, week: { carcassMass: "13.5 t", days: 3 } }));
    expect(mass.headsPerWeek).toBeCloseTo(carcasses.headsPerWeek, 6);
    expect(mass.carcassKgPerDay).toBeCloseTo(mass.carcassesPerDay * 1.5, 9);
    const halting = requiredRate(demandOf({ ...PLAIN, line: { availability: "80 %" } }));
    expect(halting.designHeadsPerSecond).toBeCloseTo(halting.headsPerSecond / 0.8, 12);
  });
});
