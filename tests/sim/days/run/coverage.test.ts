import { expect, it } from "vitest";
import { runDay } from "../../../../sim/day/engine/index.ts";
import { compileLine } from "../../../../sim/day/line/index.ts";
import { estimate } from "../../../../sim/maths/statistics/index.ts";
import { exponential, planOf, saturated, station } from "../../../support/plans.ts";

const STUDIES = 1000;
const DAYS = 10;
const HEADS = 30;

// One exponential station of mean 5 s and 30 heads: the mean end of the day is 150 s exactly. Of 1,000 intervals at 95 %,
// 926 to 971 cover the truth with probability about 0.999 (binomial).
it(`95 % intervals of ${STUDIES} small simulated studies cover the known truth as often as they say`, () => {
  const line = compileLine(planOf(saturated(HEADS), [station("only", exponential(5))]));
  let covered = 0;
  for (let study = 0; study < STUDIES; study++) {
    const ends = Array.from({ length: DAYS }, (_, day) => {
      return runDay(line, { seed: `coverage ${study}`, replication: day }).finishSeconds;
    });
    const { low, high } = estimate(ends, 0.95)!;
    if (low! <= 5 * HEADS && 5 * HEADS <= high!) covered++;
  }
  expect(covered).toBeGreaterThanOrEqual(926);
  expect(covered).toBeLessThanOrEqual(971);
});
