import { describe, expect, it } from "vitest";
import { steps } from "../../../../sim/day/line/index.ts";
import {
  plantUse,
  runningHours,
  usesEnergy,
  usesWater,
  utilityUse,
} from "../../../../sim/day/observations/utilityUse.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const STEP = Object.fromEntries(steps(WHOLE_PLAN).map((step) => [step.name, step]));

describe("utilityUse", () => {
  it("draws fresh only what of the wash water is not used again: 50 crates x 10 L + 8 h x 25 L/h, 60 % again", () => {
    const use = utilityUse(STEP["crate washing"]!, wholeDay(), WHOLE_PLAN);
    expect(use.freshLitres).toBeCloseTo(280, 10);
    expect(use.reusedLitres).toBeCloseTo(420, 10);
    expect(use.kilowattHours).toBeCloseTo(16, 10);
  });

  it("counts by the head worked on and by the hour of work: 980 x 3 L, 980 x 0.02 kWh + 8 h x 5 kW", () => {
    const use = utilityUse(STEP.skinning!, wholeDay(), WHOLE_PLAN);
    expect(use.freshLitres).toBeCloseTo(2940, 10);
    expect(use.kilowattHours).toBeCloseTo(59.6, 10);
  });

  it("keeps the chiller running until the last carcass is out: 11 h x 30 kW", () => {
    expect(runningHours(STEP.chilling!, wholeDay(), WHOLE_PLAN)).toBe(11);
    expect(utilityUse(STEP.chilling!, wholeDay(), WHOLE_PLAN).kilowattHours).toBe(330);
  });

  it("adds up to what the plant uses", () => {
    const total = steps(WHOLE_PLAN).reduce(
      (sum, step) => sum + utilityUse(step, wholeDay(), WHOLE_PLAN).freshLitres,
      0,
    );
    expect(plantUse(wholeDay(), WHOLE_PLAN).freshLitres).toBeCloseTo(total, 9);
    expect(plantUse(wholeDay(), WHOLE_PLAN)).toMatchObject({ reusedLitres: 420 });
  });

  it("knows which stages use what", () => {
    const names = (test: typeof usesWater) =>
      steps(WHOLE_PLAN)
        .filter(test)
        .map(({ name }) => name);
    expect(names(usesWater)).toEqual(["crate washing", "skinning"]);
    expect(names(usesEnergy)).toEqual(["crate washing", "skinning", "chilling"]);
  });
});
