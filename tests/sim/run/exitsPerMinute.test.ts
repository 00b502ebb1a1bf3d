import { expect, it } from "vitest";
import { exitsPerMinute } from "../../../sim/run/exitsPerMinute.ts";

it("counts what left in each whole minute, and nothing after the last whole one", () => {
  const times = [0, 10, 59.9, 60, 150, 185, 390];
  const out = { kind: "exact" as const, name: "out", endSeconds: 400, times, values: [0, 1, 2, 4, 5, 6, 9] };
  expect(exitsPerMinute(out, 190)).toEqual([2, 2, 1]);
});

it("refuses bins, which do not say when a head left", () => {
  const out = { kind: "binned" as const, name: "out", endSeconds: 2, binSeconds: 1, low: [0], high: [1], mean: [0.5] };
  expect(() => exitsPerMinute(out, 2)).toThrow(/not exact/);
});
