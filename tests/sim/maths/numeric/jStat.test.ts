import { afterEach, expect, it, vi } from "vitest";
import { jStat } from "../../../../sim/maths/numeric/index.ts";

afterEach(() => vi.restoreAllMocks());

const values = (): number[] => [
  jStat.gamma.inv(0.3, 0.4, 1),
  jStat.gamma.inv(0.99, 7.5, 1),
  jStat.beta.inv(0.2, 0.7, 3),
  jStat.studentt.inv(0.975, 9),
];

it("does not depend on the runtime's powers, whose last digits differ between releases", () => {
  const here = values();
  const { pow } = Math;
  vi.spyOn(Math, "pow").mockImplementation((base, exponent) => pow(base, exponent) * (1 + 4 * Number.EPSILON));
  const { pow: disturbed } = Math;
  expect(disturbed(3, 0.5)).not.toBe(pow(3, 0.5));
  expect(values()).toEqual(here);
});

it("gives the runtime its powers back, also after a failure", () => {
  const before = Math.pow;
  values();
  expect(() => jStat.gamma.inv(undefined as never, null as never, 1)).not.toThrow(/pow/);
  expect(Math.pow).toBe(before);
});
