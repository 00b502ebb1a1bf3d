import { describe, expect, it } from "vitest";
import type { Dwell, Plan } from "../../../../sim/asked/plan/index.ts";
import { coolingLoad, standingKilowatts } from "../../../../sim/day/observations/coolingLoad.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const COOLING = {
  cop: 2.5,
  fanKilowatts: 3,
  lightKilowatts: 0.5,
  wallKilowatts: 2,
  peopleKilowatts: 0.25,
  doorKilowatts: 1.25,
};
const PLAN: Plan = {
  ...WHOLE_PLAN,
  line: WHOLE_PLAN.line.map((stage) =>
    stage.name === "chilling"
      ? { ...(stage as Dwell), utilities: { ...stage.utilities, powerKilowatts: 0 }, cooling: COOLING }
      : stage,
  ),
};
const CHILLER = PLAN.line.find(({ name }) => name === "chilling") as Dwell;

// The hand-made day: 198 MJ out of carcasses in 11 h; 400 in it on the average of 12 h watched, 700 at most.
describe("the load of a cold room", () => {
  const load = coolingLoad(CHILLER, wholeDay(), PLAN)!;

  it("adds 7 kW that come in by themselves to the 5 kW of the carcasses: 55 + 77 kWh in 11 h", () => {
    expect(standingKilowatts(COOLING)).toBe(7);
    expect(load.hours).toBe(11);
    expect(load.carcasses).toBeCloseTo(5, 10);
    expect(load.heatKilowattHours).toBeCloseTo(132, 9);
  });

  it("takes that by the coefficient of performance, and fans and lights on top: 132 / 2.5 + 3.5 x 11 kWh", () => {
    expect(load.electricKilowattHours).toBeCloseTo(91.3, 9);
    const values = measure(wholeDay(), PLAN);
    expect(values["energy.chilling"]).toBeCloseTo(91.3, 9);
    expect(values["coldLoad.chilling.mean"]).toBeCloseTo(12, 9);
    expect(values["cop.chilling"]).toBe(2.5);
  });

  it("peaks with the most carcasses in it", () => {
    const watched = wholeDay().finishSeconds - wholeDay().watchedFromSeconds;
    const peak = (1.98e8 * 700) / (400 * watched * 1000) + 7;
    expect(load.peakHeatKilowatts).toBeCloseTo(peak, 9);
    expect(load.peakElectricKilowatts).toBeCloseTo(peak / 2.5 + 3.5, 9);
  });

  it("is larger for a larger plant: twice the heat, more electricity", () => {
    const day = wholeDay();
    const stages = day.stages.map((stage) => (stage.name === "chilling" ? { ...stage, heatJoules: 3.96e8 } : stage));
    const larger = coolingLoad(CHILLER, { ...day, stages }, PLAN)!;
    expect(larger.electricKilowattHours - load.electricKilowattHours).toBeCloseTo(55 / 2.5, 9);
  });

  it("is none of a chiller whose power is given", () => {
    expect(
      coolingLoad(WHOLE_PLAN.line.find(({ name }) => name === "chilling") as Dwell, wholeDay(), WHOLE_PLAN),
    ).toBeNull();
  });
});
