import { describe, expect, it } from "vitest";
import type { Consumer, Plan } from "../../../../sim/asked/plan/index.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { codKilograms, serviceTotals, serviceUses } from "../../../../sim/day/observations/plantServices.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const consumer = (name: string, change: Partial<Consumer>): Consumer => ({
  name,
  during: "work",
  waterPerHead: 0,
  waterPerHour: 0,
  waterPerDay: 0,
  celsius: null,
  airPerHour: 0,
  powerKilowatts: 0,
  ...change,
});
const PLAN: Plan = {
  ...WHOLE_PLAN,
  day: { ...WHOLE_PLAN.day, cleaning: { seconds: 1800, crews: [] } },
  utilities: {
    coldCelsius: 10,
    fuelPerHeat: 1.25,
    kilowattHoursPerAir: 0.1,
    codPerLitre: 0.004,
    codRemovedShare: 0.25,
    consumers: [
      consumer("sterilisers", { waterPerHour: 125, celsius: 82 }),
      consumer("cleaning", { during: "cleaning", waterPerDay: 1000, celsius: 60 }),
      consumer("rinsing", { waterPerHead: 0.5 }),
      consumer("cutters", { airPerHour: 20 }),
      consumer("store", { during: "all day", powerKilowatts: 2, waterPerHour: 10, celsius: 45 }),
    ],
  },
};
const uses = serviceUses(wholeDay(), PLAN);
const use = (name: string) => uses.find((each) => each.name === name)!;

// The hand-made day works for 8 h.
describe("what is used beside the stages", () => {
  // 1,000 L from 10 to 82 degC: 83.69 kWh, to 60 degC: 58.08 kWh, to 45 degC: 40.66 kWh (property library, 3 bar).
  it("heats 1,000 L to 82 degC with 83.7 kWh and to 60 degC with 58.1 kWh", () => {
    expect(use("sterilisers").litres).toBeCloseTo(1000, 9);
    expect(Math.abs(use("sterilisers").heatKilowattHours / 83.693 - 1)).toBeLessThan(0.001);
    expect(Math.abs(use("cleaning").heatKilowattHours / 58.084 - 1)).toBeLessThan(0.001);
    expect(Math.abs(use("store").heatKilowattHours / ((240 / 1000) * 40.66) - 1)).toBeLessThan(0.002);
  });

  it("counts heads, hours of work and 24 hours", () => {
    expect(use("rinsing").litres).toBeCloseTo(0.5 * wholeDay().heads.hung, 9);
    expect(use("cutters")).toMatchObject({ airCubicMetres: 160, electricKilowatts: 2 });
    expect(use("cutters").electricKilowattHours).toBeCloseTo(16, 9);
    expect(use("store").electricKilowattHours).toBe(48);
  });

  it("peaks while it is cleaned: 1,000 L in half an hour, and what runs all day", () => {
    const totals = serviceTotals(uses);
    expect(totals.hotLitresPerHour).toBeCloseTo(2010, 9);
    expect(totals.heatKilowatts).toBeCloseTo(2 * use("cleaning").heatKilowattHours + use("store").heatKilowatts, 9);
    expect(totals.hotLitres).toBeCloseTo(1000 + 1000 + 240, 9);
  });

  it("joins the plant's water, electricity, fuel and drains", () => {
    const [before, after] = [measure(wholeDay(), WHOLE_PLAN), measure(wholeDay(), PLAN)];
    const totals = serviceTotals(uses);
    expect(after.water! - before.water!).toBeCloseTo(totals.litres, 8);
    expect(after.energy! - before.energy!).toBeCloseTo(16 + 48, 8);
    expect(after.fuel).toBeCloseTo(1.25 * totals.heatKilowattHours, 8);
    expect(after.codLoad).toBeCloseTo(after.wasteWater! * 0.003, 8);
    expect(after.waterPerTonne).toBeCloseTo(after.water! / 1380, 9);
    expect(after.energyPerTonne).toBeCloseTo((after.energy! + after.fuel!) / 1.38, 8);
    expect(before).not.toHaveProperty("fuel");
    expect(codKilograms(100, WHOLE_PLAN)).toBeNull();
  });

  it("does not clean a day on which nothing was worked on", () => {
    const idle = serviceUses({ ...wholeDay(), workFinishSeconds: 0 }, PLAN);
    expect(idle.find(({ name }) => name === "cleaning")).toMatchObject({ litresPerHour: 0, heatKilowatts: 0 });
  });
});
