import fc from "fast-check";
import { expect, it } from "vitest";
import { type Batch, countDays, splitBatches } from "../../../../sim/days/run/batch.ts";

const BATCH = fc.record({ variant: fc.nat(9), first: fc.nat(50), count: fc.integer({ min: 1, max: 40 }) });

function daysOf(batches: readonly Batch[]): string[] {
  return batches.flatMap(({ variant, first, count }) =>
    Array.from({ length: count }, (_, day) => `${variant}/${first + day}`),
  );
}

it("splits into batches of the size asked for at most, every day once and in order", () => {
  fc.assert(
    fc.property(fc.array(BATCH), fc.integer({ min: 1, max: 12 }), (batches, size) => {
      const parts = splitBatches(batches, size);
      expect(daysOf(parts)).toEqual(daysOf(batches));
      for (const { count } of parts) expect(count).toBeLessThanOrEqual(size);
      expect(countDays(parts)).toBe(countDays(batches));
    }),
    { seed: 1 },
  );
});
