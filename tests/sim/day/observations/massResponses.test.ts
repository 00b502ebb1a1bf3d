import { describe, expect, it } from "vitest";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(wholeDay(), WHOLE_PLAN);

describe("massResponses", () => {
  it("gives the dressing percentage of the heads that left as carcasses: 1380 of 2400 kg", () => {
    expect(values).toMatchObject({ liveKg: 2500, carcassKg: 1380, dressingPercentage: 0.575 });
  });

  it("says what stays on the carcass", () => {
    const { label } = responsesOf(WHOLE_PLAN).find(({ key }) => key === "dressingPercentage")!;
    expect(label).toBe("Dressing percentage (with head, liver and kidneys)");
  });

  it("gives by-products of the plan's stages, those of chain stations too", () => {
    expect(values).toMatchObject({ "byProduct.skins": 240, "byProduct.viscera": 684 });
  });

  it("finds all mass, or says how much is missing", () => {
    expect(values.massBalanceError).toBe(0);
    const day = wholeDay();
    const lost = { ...day, masses: { ...day.masses, onLineKg: 25 } };
    expect(measure(lost, WHOLE_PLAN).massBalanceError).toBeCloseTo(0.01, 14);
  });

  it("has no dressing percentage without carcasses or without by-products", () => {
    const day = wholeDay();
    const none = { ...day, masses: { ...day.masses, carcassLiveKg: 0 } };
    expect(measure(none, WHOLE_PLAN).dressingPercentage).toBeNull();
    const plain = { ...WHOLE_PLAN, line: WHOLE_PLAN.line.slice(3) };
    expect(responsesOf(plain).map(({ key }) => key)).not.toContain("dressingPercentage");
  });
});
