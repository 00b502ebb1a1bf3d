import { expect, it } from "vitest";
import { shacklesIn } from "../../../../../sim/asked/plan/parts/shackles.ts";

it.each([
  [12, 0.3, 40],
  [0.6, 0.2, 3],
  [1.19, 0.3, 3],
  [0, 0.3, 0],
  [0.29, 0.3, 0],
])("a length of %d m has at a pitch of %d m %d whole shackles", (length, pitch, count) => {
  expect(shacklesIn(length, pitch)).toBe(count);
});
