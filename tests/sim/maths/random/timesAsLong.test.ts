import { describe, expect, it } from "vitest";
import { meanOf, timesAsLong, type Varying } from "../../../../sim/maths/random/index.ts";

describe("timesAsLong", () => {
  it.each<Varying>([
    { family: "constant", value: 4 },
    { family: "exponential", mean: 4 },
    { family: "gamma", mean: 4, cv: 0.5 },
    { family: "erlang", mean: 4, k: 3 },
    { family: "uniform", min: 1, max: 5 },
    { family: "triangular", min: 1, mode: 2, max: 5 },
    { family: "pert", min: 1, mode: 2, max: 5 },
    { family: "normal", mean: 4, sd: 3 },
    { family: "empirical", values: [1, 2, 9] },
  ])("multiplies the mean of %j", (varying) => {
    expect(meanOf(timesAsLong(varying, 1.5))).toBeCloseTo(1.5 * meanOf(varying), 10);
    expect(timesAsLong(varying, 1.5).family).toBe(varying.family);
  });
});
