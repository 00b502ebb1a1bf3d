import { expect, it } from "vitest";
import { formatP } from "../../../../sim/maths/statistics/index.ts";

it.each([
  [0.0232, "p = 0.023"],
  [0.001, "p = 0.001"],
  [0.00099, "p < 0.001"],
  [0, "p < 0.001"],
  [1, "p = 1"],
])("formatP shows %s as %s", (p, words) => {
  expect(formatP(p)).toBe(words);
});
