import { expect, it } from "vitest";
import { tidy } from "../../../../../sim/asked/plan/parts/tidy.ts";

it.each([
  [0.3 / ((3.6 * 1) / 60), 5],
  [(0.25 / 3_600_000) * 3_600_000, 0.25],
  [0, 0],
  [-0.05, -0.05],
  [1 / 3, 0.333333333333],
])("makes %d %d", (noisy, clean) => {
  expect(tidy(noisy)).toBe(clean);
});
