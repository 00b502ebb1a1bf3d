import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { explanationWords, noticeableWords } from "../../../../sim/cli/commands/calibrate.ts";
import { callCli } from "../../../support/callCli.ts";
import { cliFolder } from "../../../support/cliFolder.ts";

/** Starting the program, some hundred days of the small plan, and drawing. */
const PATIENCE = { timeout: 90_000 };
const AGREES = "day,carcasses\nMonday,476\nTuesday,470\n";
const DIFFERS = "day,06:00-07:00,finish\nMonday,200,08:20\nTuesday,204,08:21\n";
const FEW = ["--days", "5"];

describe("gambrel calibrate", PATIENCE, () => {
  it("tells that no difference was found, and what would have been, and writes nothing", async () => {
    const folder = cliFolder({ "seen.csv": AGREES });
    const { code, out, err } = await callCli(folder, ["calibrate", "plan.json", "seen.csv", ...FEW]);
    expect({ code, out }).toEqual({ code: 0, out: "" });
    expect(err).toMatch(/2 observed days compared with 5 simulated days\.\n/);
    expect(err).toMatch(/Carcasses out +473 carcasses +\d+/);
    expect(err).toMatch(/hold together at 95 %: of 100 right plans 5 at most/);
    expect(err).toMatch(/Not compared, as there is nothing to compare: day\./);
    expect(err).toMatch(
      /(Yes: the plan fits|No difference shows, but) the [\s\S]*would have been found in four of five cases/,
    );
    expect(err).toMatch(/With 2 observed days, /);
    expect(err).not.toMatch(/agrees/);
    expect(readdirSync(folder).sort()).toEqual(["plan.json", "seen.csv", "study.json"]);
  });

  it("tells where a plan differs and which figures would explain it, as JSON too, and draws it where it is told to", async () => {
    const folder = cliFolder({ "seen.csv": DIFFERS });
    const args = ["calibrate", "plan.json", "seen.csv", "--at", "skinning", "--json", "--out", "check", ...FEW];
    const { code, out, err } = await callCli(folder, args);
    expect(code).toBe(0);
    expect(err).toMatch(/Heads are counted at the end of skinning\./);
    expect(err).toMatch(/No: the plan does not fit the [\s\S]*What would explain it, one figure/);
    expect(err).toMatch(/mean cycle time of \w+, .* in the plan: .* would explain \d+ % of the gap/);
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
    expect(readdirSync(join(folder, "check")).sort()).toEqual(["charts", "report.html", "results.json"]);
    expect(readdirSync(join(folder, "check", "charts"))).toEqual(["observed.svg"]);
    const again = await callCli(folder, args);
    expect(again.code).toBe(2);
    expect(again.err).toMatch(/add --overwrite/);
  });

  it("tells every fault of the table, and writes nothing", async () => {
    const folder = cliFolder({ "seen.csv": "06:00-07:00,finish\nx,8.20\n" });
    const { code, out, err } = await callCli(folder, ["calibrate", "plan.json", "seen.csv", "--out", "check"]);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/seen\.csv: line 2, column "06:00-07:00": "x"/);
    expect(err).toMatch(/seen\.csv: line 2, column "finish": "8\.20" is not a clock time/);
    expect(existsSync(join(folder, "check"))).toBe(false);
  });

  it("answers a stage that is not there, a study in place of a plan, and too few days", async () => {
    const folder = cliFolder({ "seen.csv": AGREES });
    const run = (...args: string[]) => callCli(folder, ["calibrate", ...args]);
    expect((await run("plan.json", "seen.csv", "--at", "skining")).err).toMatch(
      /the plan has no stage 'skining'; .*did you mean 'skinning'/,
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
      "mean cycle time of skinning, 10 s in the plan: 11.5 s (15 % longer) would explain 95 % of the gap; no difference is left. Plausible.",
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
      "people of kill, 3 in the plan: 1 would explain 30 % of the gap; these still differ: finish. Hard to believe: no.",
    );
  });

  it("say of a figure what would have been found", () => {
    const repair = { kind: "repair", label: "mean repair time", path: "", from: 65, to: 87.75, limit: 325 } as const;
    expect(noticeableWords(repair)).toBe(
      "mean repair time, 1 min 5 s in the plan: 1 min 28 s or longer (35 % longer).",
    );
    const people = { ...repair, kind: "people", label: "people of kill", from: 3, to: 2, limit: 1 } as const;
    expect(noticeableWords(people)).toBe("people of kill, 3 in the plan: 2 or fewer.");
  });
});
