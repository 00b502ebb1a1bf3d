import { describe, expect, it } from "vitest";
import { type SequentialRule, sequentialState } from "../../../../sim/maths/statistics/index.ts";
import { BASE_SAMPLE } from "../../../support/workedSample.ts";

const absolute = (value: number, change: Partial<SequentialRule> = {}): SequentialRule => {
  return { halfWidth: { kind: "absolute", value }, atLeast: 5, atMost: 100, ...change };
};
const state = (values: readonly (number | null)[], rule: SequentialRule) =>
  sequentialState(values, rule, 0.95, "amount");

describe("sequentialState", () => {
  it("has enough when the half-width is the wanted one or less (worked sample: 7.2247506)", () => {
    expect(state(BASE_SAMPLE, absolute(7.23))).toEqual({
      ...{ kind: "enough", n: 10, halfWidth: expect.closeTo(7.2247506, 6), wanted: 7.23, next: 10 },
    });
    expect(state(BASE_SAMPLE, absolute(7.22)).kind).toBe("more");
  });

  it("takes a relative half-width of the mean: 1.1922 % of 606", () => {
    const relative = (value: number) => absolute(0, { halfWidth: { kind: "relative", value } });
    expect(state(BASE_SAMPLE, relative(0.01193)).kind).toBe("enough");
    expect(state(BASE_SAMPLE, relative(0.01192))).toMatchObject({ kind: "more", wanted: expect.closeTo(7.22352, 8) });
    const ofOther = sequentialState(BASE_SAMPLE, relative(0.01), 0.95, "amount", -1000);
    expect(ofOther).toMatchObject({ kind: "enough", wanted: 10 });
    expect(sequentialState(BASE_SAMPLE, relative(0.01), 0.95, "amount", null)).toMatchObject({
      kind: "more",
      wanted: null,
    });
  });

  it("foresees the number by the square of the half-widths, at most doubling it", () => {
    expect(state(BASE_SAMPLE, absolute(6)).next).toBe(Math.ceil(10 * (7.2247506 / 6) ** 2));
    expect(state(BASE_SAMPLE, absolute(3)).next).toBe(20);
    expect(state(BASE_SAMPLE, absolute(7.2247)).next).toBe(11);
    expect(state(BASE_SAMPLE, absolute(1, { atMost: 12 })).next).toBe(12);
  });

  it("looks for the first time at the least number, even when the beginning happens to agree", () => {
    expect(state([], absolute(1))).toMatchObject({ kind: "more", n: 0, halfWidth: null, next: 5 });
    expect(state([600, 600], absolute(1))).toMatchObject({ kind: "more", next: 5 });
  });

  it("stops at the ceiling", () => {
    expect(state(BASE_SAMPLE, absolute(1, { atMost: 10 }))).toMatchObject({
      ...{ kind: "ceiling", next: 10 },
    });
  });

  it("goes on over observations without a value", () => {
    const gaps = BASE_SAMPLE.flatMap((value) => [value, null]);
    expect(state(gaps, absolute(6))).toMatchObject({ kind: "more", n: 10, next: Math.ceil(20 * (7.2247506 / 6) ** 2) });
    expect(state([null, null, null], absolute(6))).toMatchObject({ kind: "more", n: 0, next: 6 });
  });
});
