import { describe, expect, it } from "vitest";
import type { Chain, Plan } from "../../../../sim/asked/plan/plan.ts";
import { measure, responsesOf } from "../../../../sim/day/observations/index.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const values = measure(wholeDay(), WHOLE_PLAN);

describe("chainResponses", () => {
  it("gives gaps as a share of the shackles: 250 and 50 of 1250", () => {
    expect(values).toMatchObject({ "gaps.evisceration chain": 0.2, "missingShackles.evisceration chain": 0.04 });
  });

  it("gives standing time by its cause as a share of 28,800 s of work", () => {
    expect(values["stood.evisceration chain"]).toBeCloseTo(0.06, 12);
    expect(values["stoodDown.evisceration chain"]).toBeCloseTo(0.025, 12);
    expect(values["stoodUnfinished.evisceration chain"]).toBeCloseTo(0.01, 12);
    expect(values["stoodUnloading.evisceration chain"]).toBeCloseTo(0.005, 12);
    expect(values["stoodPause.evisceration chain"]).toBeCloseTo(0.02, 12);
  });

  it("gives the share of heads that left a window unfinished where they may: 49 of 980", () => {
    expect(values["passedUnfinished.abdomen opening"]).toBe(0.05);
    expect(Object.keys(values)).not.toContain("passedUnfinished.evisceration");
  });

  it("has no missing shackles on a closed chain, and no shares before a shackle passed", () => {
    const closed = WHOLE_PLAN.line.map((stage) =>
      stage.kind === "chain" ? ({ ...stage, shackles: null } as Chain) : stage,
    );
    const plan: Plan = { ...WHOLE_PLAN, line: closed };
    expect(responsesOf(plan).map(({ key }) => key)).not.toContain("missingShackles.evisceration chain");
    const day = wholeDay();
    const still = { ...day, chains: day.chains.map((chain) => ({ ...chain, shackles: 0 })) };
    expect(measure(still, WHOLE_PLAN)["gaps.evisceration chain"]).toBeNull();
  });
});
