import { expect, it } from "vitest";
import { batchSize } from "../../../../sim/days/run/index.ts";

it("is at least one day and at most sixteen, with sixteen batches for each thread in between", () => {
  expect(batchSize(1, 4)).toBe(1);
  expect(batchSize(64, 4)).toBe(1);
  expect(batchSize(320, 4)).toBe(5);
  expect(batchSize(1_000_000, 4)).toBe(16);
});
