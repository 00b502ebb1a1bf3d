import { describe, expect, it } from "vitest";
import { digamma, trigamma } from "../../../../sim/maths/numeric/index.ts";

const EULER = 0.5772156649015329;

describe("digamma and trigamma", () => {
  it("have the values of Abramowitz and Stegun 1964, 6.3.2, 6.3.3 and 6.4.2, 6.4.4", () => {
    expect(digamma(1)).toBeCloseTo(-EULER, 13);
    expect(digamma(0.5)).toBeCloseTo(-EULER - 2 * Math.LN2, 13);
    expect(digamma(4)).toBeCloseTo(-EULER + 1 + 1 / 2 + 1 / 3, 13);
    expect(trigamma(1)).toBeCloseTo(Math.PI ** 2 / 6, 13);
    expect(trigamma(0.5)).toBeCloseTo(Math.PI ** 2 / 2, 13);
  });

  it.each([1e-3, 0.3, 2.7, 9.999, 10, 57, 1e4])("step by 1 / x and 1 / x^2 from %d on", (x) => {
    expect(digamma(x + 1) - digamma(x)).toBeCloseTo(1 / x, 10);
    expect((trigamma(x) - trigamma(x + 1)) * x * x).toBeCloseTo(1, x > 1000 ? 4 : 9);
  });

  it("are no numbers at 0 and below", () => {
    for (const x of [0, -1, Number.NaN]) expect([digamma(x), trigamma(x)]).toEqual([Number.NaN, Number.NaN]);
  });
});
