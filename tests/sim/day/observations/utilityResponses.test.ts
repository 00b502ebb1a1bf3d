import { describe, expect, it } from "vitest";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(wholeDay(), WHOLE_PLAN);

describe("utilityResponses", () => {
  it("gives water of the day, per carcass and per hour of work: 280 + 2940 L, 960 carcasses, 8 h", () => {
    expect(values.water).toBeCloseTo(3220, 9);
    expect(values.waterPerHead).toBeCloseTo(3220 / 960, 12);
    expect(values.waterPerHour).toBeCloseTo(402.5, 10);
  });

  it("takes all fresh water for waste water, and tells what was used again", () => {
    expect(values.wasteWater).toBe(values.water);
    expect(values.wasteWaterPerHead).toBe(values.waterPerHead);
    expect(values.waterReused).toBeCloseTo(420, 10);
  });

  it("gives energy of the day and the mean power over the hours of work: 16 + 59.6 + 330 kWh", () => {
    expect(values.energy).toBeCloseTo(405.6, 10);
    expect(values.energyPerHead).toBeCloseTo(0.4225, 12);
    expect(values.power).toBeCloseTo(50.7, 10);
  });

  it("gives a stage's power over the hours it ran", () => {
    expect(values["power.chilling"]).toBeCloseTo(30, 12);
    expect(values["waterPerHour.skinning"]).toBeCloseTo(367.5, 10);
    expect(values["energyPerHead.skinning"]).toBeCloseTo(59.6 / 960, 12);
  });

  it("has no value per head on a day without carcasses", () => {
    const day = wholeDay();
    expect(measure({ ...day, heads: { ...day.heads, out: {} } }, WHOLE_PLAN).waterPerHead).toBeNull();
  });

  it("is silent on what a plan does not use", () => {
    const keys = responsesOf(HAND_MADE_PLAN).map(({ key }) => key);
    expect(keys.filter((key) => /water|energy|power/i.test(key))).toEqual([]);
    expect(Object.keys(values).filter((key) => key.startsWith("water.") || key.startsWith("energy."))).toEqual([
      "water.crate washing",
      "water.skinning",
      "energy.crate washing",
      "energy.skinning",
      "energy.chilling",
    ]);
  });
});
