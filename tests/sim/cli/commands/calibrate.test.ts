import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { explanationWords } from "../../../../sim/cli/calibrationSummary.ts";
import { cliFolder } from "../../../support/cliFolder.ts";
import { runCli } from "../../../support/runCli.ts";

/** Starting the program, some hundred days of the small plan, and drawing. */
const PATIENCE = { timeout: 90_000 };
const AGREES = "day,carcasses\nMonday,476\nTuesday,470\n";
const DIFFERS = "day,06:00-07:00,finish\nMonday,200,08:20\nTuesday,204,08:21\n";
const FEW = ["--days", "5"];

describe("gambrel calibrate", PATIENCE, () => {
  it("tells that a plan agrees, with the error probability and the correction, and writes nothing", async () => {
    const folder = cliFolder({ "seen.csv": AGREES });
    const { code, out, err } = await runCli(folder, ["calibrate", "plan.json", "seen.csv", ...FEW]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/2 observed against 5 simulated days\.\n/);
    expect(err).toMatch(/Carcasses out +473 carcasses +\d+/);
    expect(err).toMatch(/hold at once with 95 % \(Bonferroni\).*probability 0\.05 at most/);
    expect(err).toMatch(/Passed over, as they hold nothing to compare: day\./);
    expect(err).toMatch(/No difference is shown: the plan agrees/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "seen.csv", "study.json"]);
  });

  it("tells where a plan differs and which figures would explain it, as JSON too, and draws it where it is told to", async () => {
    const folder = cliFolder({ "seen.csv": DIFFERS });
    const args = ["calibrate", "plan.json", "seen.csv", "--at", "skinning", "--json", "--out", "check", ...FEW];
    const { code, out, err } = await runCli(folder, args);
    expect(code).toBe(0);
    expect(err).toMatch(/Heads are counted at the end of skinning\./);
    expect(err).toMatch(/differ\. What would explain it/);
    expect(err).toMatch(/mean cycle time of \w+: from .* takes away \d+ % of the gap/);
    expect(err).toMatch(/measure it before you change the plan/);
    const results = JSON.parse(out);
    expect(results).toMatchObject({
      plan: "Small plant",
      observedFile: "seen.csv",
      seed: "1",
      gap: true,
      countedAt: "skinning",
    });
    expect(results.explanations[0]).toMatchObject({ path: expect.any(String), removed: expect.any(Number) });
    expect(readdirSync(join(folder, "check")).sort()).toEqual(["charts", "results.json"]);
    expect(readdirSync(join(folder, "check", "charts"))).toEqual(["observed.svg"]);
    const again = await runCli(folder, args);
    expect(again.code).toBe(2);
    expect(again.err).toMatch(/add --overwrite/);
  });

  it("tells every fault of the table, and writes nothing", async () => {
    const folder = cliFolder({ "seen.csv": "06:00-07:00,finish\nx,8.20\n" });
    const { code, out, err } = await runCli(folder, ["calibrate", "plan.json", "seen.csv", "--out", "check"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/seen\.csv: line 2, column "06:00-07:00": "x"/);
    expect(err).toMatch(/seen\.csv: line 2, column "finish": "8\.20" is not a clock time/);
    expect(existsSync(join(folder, "check"))).toBe(false);
  });

  it("answers a stage that is not there, a study in place of a plan, and too few days", async () => {
    const folder = cliFolder({ "seen.csv": AGREES });
    const run = (...args: string[]) => runCli(folder, ["calibrate", ...args]);
    expect((await run("plan.json", "seen.csv", "--at", "skining")).err).toMatch(
      /no stage of the plan.*did you mean 'skinning'/,
    );
    expect((await run("study.json", "seen.csv")).err).toMatch(/this is a study/);
    expect((await run("plan.json", "seen.csv", "--days", "2")).err).toMatch(/whole number from 5/);
    expect((await run("plan.json", "none.csv")).err).toMatch(/no such file/);
  });
});

describe("explanationWords", () => {
  const found = { kind: "cycle", label: "mean cycle time of skinning", path: "", from: 10, to: 11.5 } as const;

  it("say how far, what it takes away, what is left, and whether it can be believed", () => {
    expect(explanationWords({ ...found, removed: 0.958, left: [], closes: true, plausible: true, doubt: "" })).toBe(
      "mean cycle time of skinning: from 10 s to 11.5 s (+15 %) takes away 95 % of the gap; no difference is left. Plausible.",
    );
    const people = { ...found, kind: "people", label: "people of kill", from: 3, to: 1 } as const;
    const words = explanationWords({
      ...people,
      removed: 0.3,
      left: ["finish"],
      closes: false,
      plausible: false,
      doubt: "no",
    });
    expect(words).toBe(
      "people of kill: from 3 to 1 takes away 30 % of the gap; still differing: finish. Implausible: no.",
    );
  });
});
