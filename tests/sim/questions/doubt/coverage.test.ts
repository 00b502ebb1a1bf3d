import { expect, it } from "vitest";
import { coverage, trueEnd } from "../../../support/doubtCoverage.ts";

/** Twelve plants, each timed anew; 1,000 of them by hand: tests/proofs/coverage.ts. */
it("the interval with what is not known holds the true end of work, the plain one mostly does not (false alarm 0.001 each)", async () => {
  const { full, plain } = await coverage(12, await trueEnd(400), "small");
  // Fewer than 8 of 12 happens with probability 0.0002 where 95 % hold; more than 7 with 0.0006 where 20 % do.
  expect(full).toBeGreaterThanOrEqual(8);
  expect(plain).toBeLessThanOrEqual(7);
}, 60_000);
