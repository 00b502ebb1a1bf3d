import { describe, expect, it } from "vitest";
import { paidTime } from "../../../../sim/day/observations/labour.ts";
import { HAND_MADE_PLAN, handMadeDay } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

const [dressing, maintenance] = WHOLE_PLAN.crews as [
  (typeof WHOLE_PLAN.crews)[number],
  (typeof WHOLE_PLAN.crews)[number],
];

describe("paidTime", () => {
  it("pays who was there by shift, and those who clean until it is clean", () => {
    // 4 people x 4 h + 2 people x 3 h; 2 people x (1 h to the last work + half an hour of cleaning)
    expect(paidTime(dressing, wholeDay(), WHOLE_PLAN)).toEqual({ regularSeconds: 79_200, overtimeSeconds: 10_800 });
  });

  it("pays those who do not clean until the last work", () => {
    expect(paidTime(maintenance, wholeDay(), WHOLE_PLAN)).toEqual({ regularSeconds: 25_200, overtimeSeconds: 3600 });
  });

  it("pays whole shifts, and no overtime, when work ends early", () => {
    const early = { ...wholeDay(), workFinishSeconds: 20_000 };
    expect(paidTime(dressing, early, WHOLE_PLAN)).toEqual({ regularSeconds: 79_200, overtimeSeconds: 0 });
  });

  it("counts only the part of cleaning that lies beyond the last shift", () => {
    const day = { ...wholeDay(), workFinishSeconds: 28_000 };
    expect(paidTime(dressing, day, WHOLE_PLAN).overtimeSeconds).toBe(2 * 1000);
  });

  it("works without cleaning", () => {
    expect(paidTime(HAND_MADE_PLAN.crews[0]!, handMadeDay(), HAND_MADE_PLAN)).toEqual({
      regularSeconds: 4 * 5400,
      overtimeSeconds: 4 * 1800,
    });
  });
});
