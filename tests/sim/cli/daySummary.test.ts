import { describe, expect, it } from "vitest";
import { daySummary } from "../../../sim/cli/daySummary.ts";
import { OWN_TIME, WORK_IN_HAND } from "../../../sim/day/observations/index.ts";
import { runSingleDay } from "../../../sim/index.ts";
import { handMadeResults } from "../../support/handMadeResults.ts";
import { killLineDay, smoothPlan } from "../../support/killStopResults.ts";
import { readSmallPlan } from "../../support/readSmallPlan.ts";

describe("daySummary", () => {
  it("shows what came out, when it ended, and what each stage did, in shares of its own time", () => {
    const lines = daySummary(handMadeResults());
    expect(lines).toContainEqual(expect.stringMatching(/^End of work on the line +08:30$/));
    const skinning = /^skinning +61\.2 % +12\.2 % +8\.2 % +6\.1 % +12\.2 % +5\.8 % +2\.5 +5$/;
    expect(lines).toContainEqual(expect.stringMatching(skinning));
    expect(lines).toContainEqual(expect.stringContaining(OWN_TIME));
  });

  it("leads with stunned heads that waited too long, and with nothing when none did", () => {
    expect(daySummary(killLineDay())[0]).toMatch(/^Animal welfare first\. 2\.5 % \(1 of 40 stunned heads\)/u);
    expect(daySummary(killLineDay(smoothPlan())).join("\n")).not.toContain("welfare");
  });

  it("says of each crew where its work in hand lay, in person-hours", () => {
    const lines = daySummary(handMadeResults());
    // 8 h on duty, 6 h with work in hand, one of them waiting for a repair.
    expect(lines).toContainEqual(expect.stringMatching(/^dressing +8\.0 +6\.0 +5\.0 +1\.0 +0\.0$/));
    expect(lines.at(-1)).toBe(WORK_IN_HAND);
  });

  it("says before any figure of the day that it was cut off, and where heads are left", () => {
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
    expect(lines[0]).toMatch(/^Animal welfare first\./u);
    expect(lines[1]).toMatch(/did not end by itself: it was cut off/);
    expect(lines.slice(2, 7).join(" ")).toMatch(
      /\d+ heads at 'skinning' are not through yet: their time is not over\./,
    );
  });
});
