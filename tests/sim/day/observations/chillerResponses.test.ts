import { describe, expect, it } from "vitest";
import type { Dwell, Plan } from "../../../../sim/asked/plan/plan.ts";
import { measure } from "../../../../sim/day/observations/index.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(wholeDay(), WHOLE_PLAN);

describe("chillerResponses", () => {
  it("gives the mean heat from the first shift to the last carcass: 198 MJ in 39,600 s", () => {
    expect(values["heatLoad.chilling.mean"]).toBeCloseTo(5, 12);
  });

  it("gives the peak in proportion to the carcasses present: 700 against 400 on the average", () => {
    expect(values["heatLoad.chilling.peak"]).toBeCloseTo(8.75, 12);
  });

  it("puts two heads on a hook", () => {
    expect(values).toMatchObject({ "hooks.chilling.mean": 200, "hooks.chilling.max": 350 });
  });

  it("has no heat for a drawn dwell, and no hooks of its own where each head has one", () => {
    const plain = measure(handMadeDay(), HAND_MADE_PLAN);
    expect(Object.keys(plain).filter((key) => /^(heatLoad|hooks)\./.test(key))).toEqual([]);
    const dual = HAND_MADE_PLAN.line.map((stage) =>
      stage.kind === "dwell" ? ({ ...stage, headsPerHook: 2 } as Dwell) : stage,
    );
    const plan: Plan = { ...HAND_MADE_PLAN, line: dual };
    expect(measure(handMadeDay(), plan)["hooks.chilling.max"]).toBe(45);
  });

  it("has no peak when no carcass came in", () => {
    const day = wholeDay();
    const stages = day.stages.map((stage) => ({ ...stage, queue: { mean: 0, max: 0 }, heatJoules: 0 }));
    expect(measure({ ...day, stages }, WHOLE_PLAN)["heatLoad.chilling.peak"]).toBeNull();
  });
});
