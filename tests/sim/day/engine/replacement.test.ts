import { describe, expect, it } from "vitest";
import { breakdown } from "../../../support/breakdowns.ts";
import { constant, planOf, saturated, station } from "../../../support/plans.ts";
import { passes, runChecked, secondsIn } from "../../../support/timeline.ts";

const timed = (uptime: number, repair: number, replaced: { afterSeconds: number; takesSeconds: number }) =>
  breakdown(uptime, repair, { uptimeSeconds: constant(uptime), repairSeconds: constant(repair), replaced });

describe("what wears and is replaced by its age", () => {
  it("stops for the replacement, and its work goes on with the time left", () => {
    // It would run for 10 s; it is replaced after 6 s of work in 2 s: heads of 4 s end at 4, then 4-6, down to 8, done 10; 10-14, 14-14 ...
    const line = [station("a", 4, { breakdowns: [timed(10, 50, { afterSeconds: 6, takesSeconds: 2 })] })];
    const day = runChecked(planOf(saturated(3), line));
    expect(passes(day, "a", "end").slice(0, 3)).toEqual([4, 10, 14]);
    expect(day.stages[0]).toMatchObject({ replacements: 1, stops: 1 });
    expect(secondsIn(day, "a").down).toBe(2);
  });

  it("is repaired as ever where it breaks before", () => {
    const line = [station("a", 4, { breakdowns: [timed(5, 3, { afterSeconds: 6, takesSeconds: 2 })] })];
    const day = runChecked(planOf(saturated(2), line));
    expect(passes(day, "a", "end").slice(0, 2)).toEqual([4, 11]);
    expect(day.stages[0]).toMatchObject({ replacements: 0, stops: 1 });
  });
});
