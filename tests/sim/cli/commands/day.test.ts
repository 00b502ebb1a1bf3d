import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { daySummary } from "../../../../sim/cli/commands/day.ts";
import { OWN_TIME, WORK_IN_HAND } from "../../../../sim/day/observations/index.ts";
import { runSingleDay } from "../../../../sim/index.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { handMadeResults } from "../../../support/handMadeResults.ts";
import { killLineDay, smoothPlan } from "../../../support/killStopResults.ts";
import { readSmallPlan } from "../../../support/readSmallPlan.ts";
import { SMALL_PLAN } from "../../../support/smallPlan.ts";

/** Starting the program and loading the report take most of a second each time. */
const PATIENCE = { timeout: 60_000 };

const TABLES = [
  "data-dictionary.csv",
  "data-dictionary.json",
  "summary.csv",
  "traces.csv",
  "values.csv",
  "values.parquet",
];

describe("gambrel day", PATIENCE, () => {
  it("shows the day on standard error and writes nothing", async () => {
    const folder = cliFolder();
    const { code, out, err } = await callCli(folder, ["day", "plan.json"]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/Carcasses out +\d+ carcasses/);
    expect(err).toMatch(/stage, share of own time +working +blocked +starved +no crew +down +on break/);
    expect(err).toMatch(/official veterinarian/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "study.json"]);
  });

  it("gives the same data for the same seed and day, and other data for others", async () => {
    const folder = cliFolder();
    const day = async (...more: string[]): Promise<number | null> => {
      const { out } = await callCli(folder, ["day", "plan.json", "--json", "--traces", "none", ...more]);
      return JSON.parse(out).variants[0].values.finish[0];
    };
    const first = await day("--seed", "a");
    expect(await day("--seed", "a")).toBe(first);
    expect(await day("--seed", "b")).not.toBe(first);
    expect(await day("--seed", "a", "--day", "2")).not.toBe(first);
  });

  it("writes a run folder where it is told to", async () => {
    const folder = cliFolder();
    const { code } = await callCli(folder, ["day", "plan.json", "--out", "my day", "--traces", "exact"]);
    expect(code).toBe(0);
    expect(readdirSync(join(folder, "my day")).sort()).toEqual([
      "charts",
      ...TABLES.slice(0, 2),
      ...["plan.json", "report.html", "results.json", "stops.csv"],
      ...TABLES.slice(2),
    ]);
    expect(JSON.parse(readFileSync(join(folder, "my day", "plan.json"), "utf8"))).toEqual(SMALL_PLAN);
  });

  it("points out that a study is no plan", async () => {
    const { code, err } = await callCli(cliFolder(), ["day", "study.json"]);
    expect(code).toBe(2);
    expect(err).toMatch(/this is a study; run it with "gambrel study"/);
  });
});

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
    expect(lines[1]).toMatch(/The day did not end by itself: it was cut off at the longest day allowed/);
    expect(lines.slice(2, 12).join(" ").replace(/ +/g, " ")).toMatch(
      /\d+ heads at 'skinning' are not through yet: their time is not over\./,
    );
  });
});
