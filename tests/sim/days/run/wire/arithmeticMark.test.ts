import { afterEach, expect, it, vi } from "vitest";
import { arithmeticMark } from "../../../../../sim/days/run/wire/index.ts";

afterEach(() => vi.restoreAllMocks());

it("is the same every time", () => {
  expect(arithmeticMark()).toMatch(/^[0-9a-f]{12}$/);
  expect(arithmeticMark()).toBe(arithmeticMark());
});

it("notices a logarithm that is one unit in the last place off, once in a thousand", () => {
  const here = arithmeticMark();
  const { log } = Math;
  vi.spyOn(Math, "log").mockImplementation((x) => log(x) * (x === 500 / 37 ? 1 + Number.EPSILON : 1));
  expect(Math.log(500 / 37)).not.toBe(log(500 / 37));
  expect(arithmeticMark()).not.toBe(here);
});
