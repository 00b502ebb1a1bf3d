import { describe, expect, it } from "vitest";
import { daySummary } from "../../../sim/cli/daySummary.ts";
import { runSingleDay } from "../../../sim/index.ts";
import { handMadeResults } from "../../support/handMadeResults.ts";
import { readSmallPlan } from "../../support/readSmallPlan.ts";

describe("daySummary", () => {
  it("shows what came out, when it ended, and what each stage did, in shares of position time", () => {
    const lines = daySummary(handMadeResults());
    expect(lines).toContainEqual(expect.stringMatching(/^End of work on the line +08:30$/));
    expect(lines.at(-2)).toMatch(/^skinning +50\.0 % +10\.0 % +20\.0 % +5\.0 % +10\.0 % +5\.0 % +2\.5 +5$/);
  });

  it("says first of all that a day was cut off, and where heads are left", () => {
    const results = runSingleDay(
      { ...readSmallPlan(), day: { ...readSmallPlan().day, ceilingSeconds: 4000 } },
      "1",
      "none",
      {
        gambrel: "1",
        command: "c",
      },
    );
    const lines = daySummary(results);
    expect(lines[0]).toMatch(/did not end by itself: it was cut off/);
    expect(lines.slice(1, 6).join(" ")).toMatch(
      /\d+ heads at 'skinning' are not through yet: their time is not over\./,
    );
  });
});
