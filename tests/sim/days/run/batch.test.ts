import fc from "fast-check";
import { expect, it } from "vitest";
import { type Batch, countDays, splitBatches } from "../../../../sim/days/run/batch.ts";

const BATCH = fc.record({ variant: fc.nat(9), first: fc.nat(50), count: fc.integer({ min: 1, max: 40 }) });

function daysOf(batches: readonly Batch[]): string[] {
  return batches.flatMap(({ variant, first, count }) =>
    Array.from({ length: count }, (_, day) => `${variant}/${first + day}`),
  );
}

it("splits into batches of the size asked for at most, every day once", () => {
  fc.assert(
    fc.property(fc.array(BATCH), fc.integer({ min: 1, max: 12 }), (batches, size) => {
      const parts = splitBatches(batches, size);
      expect(daysOf(parts).sort()).toEqual(daysOf(batches).sort());
      for (const { count } of parts) expect(count).toBeLessThanOrEqual(size);
      expect(countDays(parts)).toBe(countDays(batches));
    }),
    { seed: 1 },
  );
});

it("takes the variants in turns, so that a run that is stopped is balanced to one batch", () => {
  const batches = Array.from({ length: 5 }, (_, variant) => ({ variant, first: 0, count: 23 }));
  const done = batches.map(() => 0);
  for (const { variant, first, count } of splitBatches(batches, 4)) {
    expect(first).toBe(done[variant]);
    done[variant]! += count;
    expect(Math.max(...done) - Math.min(...done)).toBeLessThanOrEqual(4);
  }
  expect(done).toEqual([23, 23, 23, 23, 23]);
});
