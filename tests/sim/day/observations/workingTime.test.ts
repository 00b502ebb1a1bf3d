import { describe, expect, it } from "vitest";
import { cleaningEndSeconds, openSeconds, workingSeconds } from "../../../../sim/day/observations/workingTime.ts";
import { HAND_MADE_PLAN } from "../../../support/handMadeDay.ts";
import { WHOLE_PLAN, wholeDay } from "../../../support/wholeDay.ts";

describe("workingSeconds", () => {
  it("is the shifts and the overtime, without the gap between shifts: 4 h + 3 h + 1 h", () => {
    expect(workingSeconds(wholeDay(), WHOLE_PLAN)).toBe(28_800);
  });

  it("ends with the last work", () => {
    expect(workingSeconds({ ...wholeDay(), workFinishSeconds: 20_000 }, WHOLE_PLAN)).toBe(16_400);
    expect(workingSeconds({ ...wholeDay(), workFinishSeconds: 0 }, WHOLE_PLAN)).toBe(0);
  });

  it("leaves out what a warm-up cut off", () => {
    expect(workingSeconds({ ...wholeDay(), watchedFromSeconds: 10_000 }, WHOLE_PLAN)).toBe(18_800);
    expect(workingSeconds({ ...wholeDay(), watchedFromSeconds: 30_000 }, WHOLE_PLAN)).toBe(2400);
  });
});

describe("openSeconds", () => {
  it("runs from the first shift to the last carcass out", () => {
    expect(openSeconds(wholeDay(), WHOLE_PLAN)).toBe(39_600);
    expect(openSeconds(wholeDay(), HAND_MADE_PLAN)).toBe(37_800);
    expect(openSeconds({ ...wholeDay(), watchedFromSeconds: 3600 }, WHOLE_PLAN)).toBe(36_000);
  });
});

describe("cleaningEndSeconds", () => {
  it("is so long after the last work", () => {
    expect(cleaningEndSeconds(wholeDay(), WHOLE_PLAN)).toBe(34_200);
  });

  it("is null without cleaning and without work", () => {
    expect(cleaningEndSeconds(wholeDay(), HAND_MADE_PLAN)).toBeNull();
    expect(cleaningEndSeconds({ ...wholeDay(), workFinishSeconds: 0 }, WHOLE_PLAN)).toBeNull();
  });
});
